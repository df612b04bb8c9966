#pragma once

#include <memory>

#include "model/drawing.h"
#include "model/fact.h"

namespace benchleaf::compose {

inline constexpr double kYearsMm = 20;

/// How long a cell lasts, as a bar on a scale of 0 to 8 years with a line each two, its figures over it. `life` is in months
/// with both ends; nothing where an end is missing.
std::shared_ptr<const model::Drawing> years_bar(const model::Fact& life);

}  // namespace benchleaf::compose
