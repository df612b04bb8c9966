#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// scratch-ladder: a scratch to a ladder of grades, what it removes and what is left.
Calculator scratch_ladder_calculator();

}  // namespace benchleaf::bench
