#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// crust-dose: a residue and a liquid to swabs, millilitres and gas.
Calculator crust_dose_calculator();

}  // namespace benchleaf::bench
