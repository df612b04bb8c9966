#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// crystal-thickness: a flat crystal under a named load to stress, sag, safety and the least thickness.
Calculator crystal_thickness_calculator();

}  // namespace benchleaf::bench
