#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// cell-swap: a cell, or a size, to the cells that may be used in its place, ranked, each with verdict and reason.
Calculator cell_swap_calculator();

}  // namespace benchleaf::bench
