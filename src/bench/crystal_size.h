#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// crystal-size: which crystal a seat or an old crystal asks for, alone or in an L gasket, and how it is squeezed.
Calculator crystal_size_calculator();

}  // namespace benchleaf::bench
