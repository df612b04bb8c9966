#pragma once

#include <string>
#include <string_view>

#include "bench/calculator.h"

namespace benchleaf::bench {

/// How an output of a calculator is printed, or nullptr where it declares none of this name.
const OutputInfo* print_rule(std::string_view calculator, std::string_view output);

/// A value rounded as its rule says: the one place where a result is rounded.
std::string figure(const OutputInfo& rule, double value);

/// An output with its label and nothing else; the calculator must declare it.
Output make_output(std::string_view calculator, std::string_view name);

}  // namespace benchleaf::bench
