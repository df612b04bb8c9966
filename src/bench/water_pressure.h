#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// water-pressure: depth to overpressure and back; tells nothing about any watch.
Calculator water_pressure_calculator();

}  // namespace benchleaf::bench
