#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// gold-margin: a gold layer or mark against the grain of an abrasive.
Calculator gold_margin_calculator();

}  // namespace benchleaf::bench
