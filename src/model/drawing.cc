// In: sizes in millimetres. Out: the plain paths that every drawing is made of.
#include "model/drawing.h"

#include <algorithm>

namespace benchleaf::model {

namespace {

/// Length of the handles of a cubic that draws a quarter of a unit circle: 4/3 (sqrt 2 - 1). The largest radial error
/// is 0.027 %, below the width of any line here.
constexpr double kQuarterHandle = 0.5522847498307936;

PathStep move_to(Mm to) { return {PathStep::Op::move, to, {}, {}}; }
PathStep line_to(Mm to) { return {PathStep::Op::line, to, {}, {}}; }
PathStep close_path() { return {PathStep::Op::close, {}, {}, {}}; }

/// A quarter of a circle from `from` to `to`, its handles lying towards `corner`, where the two tangents meet.
PathStep quarter_to(Mm from, Mm corner, Mm to) {
  PathStep step;
  step.op = PathStep::Op::curve;
  step.to = to;
  step.control1 = {from.x + kQuarterHandle * (corner.x - from.x), from.y + kQuarterHandle * (corner.y - from.y)};
  step.control2 = {to.x + kQuarterHandle * (corner.x - to.x), to.y + kQuarterHandle * (corner.y - to.y)};
  return step;
}

}  // namespace

PathShape circle(Mm centre, double radius_mm) {
  return rectangle({centre.x - radius_mm, centre.y - radius_mm}, 2 * radius_mm, 2 * radius_mm, radius_mm);
}

PathShape rectangle(Mm top_left, double width_mm, double height_mm, double corner_mm) {
  const double left = top_left.x, top = top_left.y, right = left + width_mm, bottom = top + height_mm;
  const double r = std::clamp(corner_mm, 0.0, std::max(0.0, std::min(width_mm, height_mm) / 2));
  PathShape shape;
  if (r <= 0) {
    shape.steps = {move_to({left, top}), line_to({right, top}), line_to({right, bottom}), line_to({left, bottom}), close_path()};
    return shape;
  }
  const bool wide = width_mm > 2 * r, high = height_mm > 2 * r;
  auto corner = [&shape](Mm from, Mm at, Mm to) { shape.steps.push_back(quarter_to(from, at, to)); };
  shape.steps.push_back(move_to({left + r, top}));
  if (wide) shape.steps.push_back(line_to({right - r, top}));
  corner({right - r, top}, {right, top}, {right, top + r});
  if (high) shape.steps.push_back(line_to({right, bottom - r}));
  corner({right, bottom - r}, {right, bottom}, {right - r, bottom});
  if (wide) shape.steps.push_back(line_to({left + r, bottom}));
  corner({left + r, bottom}, {left, bottom}, {left, bottom - r});
  if (high) shape.steps.push_back(line_to({left, top + r}));
  corner({left, top + r}, {left, top}, {left + r, top});
  shape.steps.push_back(close_path());
  return shape;
}

PathShape line(Mm from, Mm to) {
  PathShape shape;
  shape.steps = {move_to(from), line_to(to)};
  return shape;
}

}  // namespace benchleaf::model
