#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// vapour: what the vapour of a liquid makes of the air of a room, against the limit for breathing.
Calculator vapour_calculator();

}  // namespace benchleaf::bench
