#pragma once

#include <memory>
#include <vector>

#include "model/drawing.h"

namespace benchleaf::compose {

/// Circles of these diameters in millimetres, smallest first, round one centre at true size, each with its figure inside it
/// in type of this size.
std::shared_ptr<const model::Drawing> nest(const std::vector<int>& diameters_mm, double key_mm);
/// Millimetres above, inches below, on one line at true size.
std::shared_ptr<const model::Drawing> twin_scale_drawing();

}  // namespace benchleaf::compose
