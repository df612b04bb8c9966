#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// fog-point: the temperature at which the air shut into a watch fogs, and what the warm-plate test then tells.
Calculator fog_point_calculator();

}  // namespace benchleaf::bench
