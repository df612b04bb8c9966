#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// cell-decode: a designation to system, voltages, diameter by code and range of heights.
Calculator cell_decode_calculator();

}  // namespace benchleaf::bench
