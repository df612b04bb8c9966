#pragma once

#include "model/drawing.h"

namespace benchleaf::compose {

/// Adds a shape with its pen and fill.
void add(model::Drawing& drawing, model::PathShape shape, model::Ink stroke, model::Ink fill, double stroke_mm);
/// The head of an arrow: its tip, the way it points (one along an axis), its length.
void add_arrow_head(model::Drawing& drawing, model::Mm tip, model::Mm way, double length_mm);

}  // namespace benchleaf::compose
