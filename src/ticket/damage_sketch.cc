// Out: the outline of a watch, front and back, for the intake card.
#include "ticket/damage_sketch.h"

#include <string>

namespace benchleaf::ticket {

namespace {

using model::Drawing;
using model::Ink;
using model::Mm;
using model::PathShape;

constexpr double kPen = 0.25;
constexpr double kAcross = 76;  // one watch
constexpr double kHigh = 62;

void add(Drawing& drawing, PathShape shape) {
  shape.stroke = Ink::second_ink;
  shape.stroke_mm = kPen;
  drawing.shapes.emplace_back(std::move(shape));
}

void polygon(Drawing& drawing, const std::vector<Mm>& points) {
  PathShape shape;
  for (const Mm& point : points) {
    const auto op = shape.steps.empty() ? model::PathStep::Op::move : model::PathStep::Op::line;
    shape.steps.push_back({op, point, {}, {}});
  }
  shape.steps.push_back({model::PathStep::Op::close, {}, {}, {}});
  add(drawing, std::move(shape));
}

/// Case, lugs, four pushers and the crown round a middle.
void outline(Drawing& drawing, double x, double y) {
  for (const double side : {-1.0, 1.0}) {
    polygon(drawing, {{x - 13, y + side * 29}, {x + 13, y + side * 29}, {x + 15, y + side * 20}, {x - 15, y + side * 20}});
    for (const double up : {-1.0, 1.0}) add(drawing, model::rectangle({x + side * 23.5 - 2.2, y + up * 11 - 1.8}, 4.4, 3.6, 0.6));
  }
  add(drawing, model::rectangle({x + 22.6, y - 2.2}, 4.6, 4.4, 0.6));
  PathShape body = model::circle({x, y}, 22.5);
  body.fill = Ink::paper;
  add(drawing, std::move(body));
}

void words(Drawing& drawing, double x, double y, const char* text) {
  model::TextShape shape;
  shape.at = {x, y};
  shape.text = text;
  shape.height_mm = 3.4;
  shape.anchor = model::TextShape::Anchor::middle;
  shape.ink = Ink::second_ink;
  drawing.shapes.emplace_back(std::move(shape));
}

}  // namespace

std::shared_ptr<const Drawing> damage_sketch() {
  Drawing drawing;
  drawing.width_mm = 2 * kAcross;
  drawing.height_mm = kHigh;
  drawing.alt = "A watch in outline, from the front with its crystal and from the back with its lid, to mark damage on.";
  const double y = kHigh / 2;
  outline(drawing, kAcross / 2, y);
  add(drawing, model::circle({kAcross / 2, y}, 17));
  add(drawing, model::rectangle({kAcross / 2 - 10, y - 6}, 20, 12, 1));
  words(drawing, kAcross / 2, y + 13, "front");
  outline(drawing, 1.5 * kAcross, y);
  add(drawing, model::circle({1.5 * kAcross, y}, 19));
  add(drawing, model::circle({1.5 * kAcross, y}, 16));
  words(drawing, 1.5 * kAcross, y + 1, "back");
  return std::make_shared<const Drawing>(std::move(drawing));
}

}  // namespace benchleaf::ticket
