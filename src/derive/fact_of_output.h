#pragma once

#include <string>

#include "bench/result.h"
#include "model/fact.h"

namespace benchleaf::derive {

/// An output of a calculator as a derived fact `RECORD#CALCULATOR.OUTPUT`.
model::Fact fact_of_output(bench::Output output, const std::string& record, const std::string& calculator);

}  // namespace benchleaf::derive
