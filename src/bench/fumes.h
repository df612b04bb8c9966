#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// fumes: a spilt liquid to the air that its vapour makes burn, and its share in a room.
Calculator fumes_calculator();

}  // namespace benchleaf::bench
