#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// rinse: carry-over, volume and times to what is left.
Calculator rinse_calculator();

}  // namespace benchleaf::bench
