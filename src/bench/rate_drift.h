#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// rate-drift: ppm to seconds and back, the drift with temperature, and how long a rate is measured.
Calculator rate_drift_calculator();

}  // namespace benchleaf::bench
