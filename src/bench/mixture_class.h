#pragma once

#include "bench/calculator.h"

namespace benchleaf::bench {

/// mixture-class: shares of substances in percent by mass to classes, signal word, pictograms, and what no percentage decides.
Calculator mixture_class_calculator();

}  // namespace benchleaf::bench
