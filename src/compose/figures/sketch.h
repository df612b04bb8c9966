#pragma once

#include <vector>

#include "model/drawing.h"

namespace benchleaf::compose {

/// An empty picture of a size, with what it will show in words.
model::Drawing picture(double width_mm, double height_mm, const char* alt);
/// Adds a line through points.
void add_line(model::Drawing& drawing, const std::vector<model::Mm>& points, double pen_mm);
/// Adds a shape with its pen and fill.
void add(model::Drawing& drawing, model::PathShape shape, model::Ink stroke, model::Ink fill, double stroke_mm);
/// A measure between two points on a line along one axis, with a head at each end.
void add_measure(model::Drawing& drawing, model::Mm from, model::Mm to, double pen_mm);
/// The head of an arrow: its tip, the way it points (one along an axis), its length.
void add_arrow_head(model::Drawing& drawing, model::Mm tip, model::Mm way, double length_mm);

}  // namespace benchleaf::compose
