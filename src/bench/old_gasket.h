#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// old-gasket: how far an old gasket is set, and whether it still seals.
Calculator old_gasket_calculator();

}  // namespace benchleaf::bench
