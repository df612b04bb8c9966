#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// screw-thread: which thread a small screw has, by its diameter and pitch.
Calculator screw_thread_calculator();

}  // namespace benchleaf::bench
