#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// bath-mix: a ratio or a strength to parts of concentrate and water.
Calculator bath_mix_calculator();

}  // namespace benchleaf::bench
