#pragma once

#include "model/fact.h"

namespace benchleaf::compose {

/// Whether two facts say the same value, whatever they rest on.
inline bool same_value(const model::Fact& one, const model::Fact& other) {
  return one.printed == other.printed && one.value == other.value && one.low == other.low && one.high == other.high &&
         one.unit == other.unit;
}

}  // namespace benchleaf::compose
