#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// gasket-fit: a measure of the seat to a size of a series, with stretch, squeeze and fill.
Calculator gasket_fit_calculator();

}  // namespace benchleaf::bench
