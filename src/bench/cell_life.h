#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// cell-life: charge, loads and losses to a life in months.
Calculator cell_life_calculator();

}  // namespace benchleaf::bench
