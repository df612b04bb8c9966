// In: shapes. Out: the same in a drawing, with pen and fill.
#include "compose/figures/sketch.h"

#include <utility>

namespace benchleaf::compose {

model::Drawing picture(double width_mm, double height_mm, const char* alt) {
  model::Drawing drawing;
  drawing.width_mm = width_mm;
  drawing.height_mm = height_mm;
  drawing.alt = alt;
  return drawing;
}

void add_line(model::Drawing& drawing, const std::vector<model::Mm>& points, double pen_mm) {
  using Op = model::PathStep::Op;
  model::PathShape path;
  for (const model::Mm& point : points) path.steps.push_back({path.steps.empty() ? Op::move : Op::line, point, {}, {}});
  add(drawing, std::move(path), model::Ink::ink, model::Ink::none, pen_mm);
}

void add(model::Drawing& drawing, model::PathShape shape, model::Ink stroke, model::Ink fill, double stroke_mm) {
  shape.stroke = stroke;
  shape.fill = fill;
  shape.stroke_mm = stroke_mm;
  drawing.shapes.push_back(std::move(shape));
}

void add_arrow_head(model::Drawing& drawing, model::Mm tip, model::Mm way, double length_mm) {
  using Op = model::PathStep::Op;
  const double side = length_mm / 3;
  const model::Mm back{tip.x - way.x * length_mm, tip.y - way.y * length_mm};
  model::PathShape head;
  head.steps.push_back({Op::move, tip, {}, {}});
  head.steps.push_back({Op::line, {back.x + way.y * side, back.y + way.x * side}, {}, {}});
  head.steps.push_back({Op::line, {back.x - way.y * side, back.y - way.x * side}, {}, {}});
  head.steps.push_back({Op::close, tip, {}, {}});
  add(drawing, std::move(head), model::Ink::none, model::Ink::ink, 0);
}

void add_measure(model::Drawing& drawing, model::Mm from, model::Mm to, double pen_mm) {
  constexpr double kHead = 1.6;
  const bool across = from.y == to.y;
  const model::Mm on = across ? model::Mm{1, 0} : model::Mm{0, 1};
  add_line(drawing, {from, to}, pen_mm);
  add_arrow_head(drawing, from, {-on.x, -on.y}, kHead);
  add_arrow_head(drawing, to, on, kHead);
}

}  // namespace benchleaf::compose
