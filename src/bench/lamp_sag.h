#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// lamp-sag: voltage of a cell under lamp or alarm, and whether it still runs the module.
Calculator lamp_sag_calculator();

}  // namespace benchleaf::bench
