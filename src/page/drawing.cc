// In: device-neutral drawings in millimetres. Out: paths and text on the page.
#include "page/drawing.h"

#include <cmath>
#include <utility>

#include "page/words.h"

namespace benchleaf::page {
namespace {

Point scaled(model::Mm mm, double scale) { return {from_mm(mm.x * scale), from_mm(mm.y * scale)}; }

PathSegment segment(const model::PathStep& step, double scale) {
  PathSegment out;
  switch (step.op) {
    case model::PathStep::Op::move: out.op = PathSegment::Op::move; break;
    case model::PathStep::Op::line: out.op = PathSegment::Op::line; break;
    case model::PathStep::Op::curve: out.op = PathSegment::Op::curve; break;
    case model::PathStep::Op::close: out.op = PathSegment::Op::close; break;
  }
  out.to = scaled(step.to, scale);
  out.control1 = scaled(step.control1, scale);
  out.control2 = scaled(step.control2, scale);
  return out;
}

std::vector<Item> place_text(Setting& setting, const model::TextShape& shape, double scale, TagId tag) {
  Look look = look::table_cell();
  look.size_pt = shape.height_mm * scale * 72 / 25.4;
  look.leading_pt = look.size_pt;
  look.color = print_color(shape.ink);
  if (shape.bold) look = bold_of(look);
  TagId owner = tag;
  if (!shape.fact.empty() && tag >= 0) {
    owner = setting.add_tag(Role::span, tag);
    setting.tags.back().set().title = shape.fact;
  }
  PlainLine line = set_plain(setting, shape.text, look, owner);
  Point at = scaled(shape.at, scale);
  if (shape.anchor == model::TextShape::Anchor::middle) at.x -= line.width / 2;
  if (shape.anchor == model::TextShape::Anchor::end) at.x -= line.width;
  for (Item& item : line.items) shift(item, at.x, at.y);
  return std::move(line.items);
}

}  // namespace

PathItem place_path(const model::PathShape& shape, double scale) {
  PathItem path;
  for (const model::PathStep& step : shape.steps) path.segments.push_back(segment(step, scale));
  if (shape.fill != model::Ink::none) path.fill = print_color(shape.fill);
  if (shape.stroke != model::Ink::none) path.stroke = print_color(shape.stroke);
  path.stroke_width = from_mm(shape.stroke_mm * scale);
  for (const double dash : shape.dash_mm) path.dash.push_back(from_mm(dash * scale));
  path.even_odd = shape.even_odd;
  return path;
}

std::vector<Item> place_drawing(Setting& setting, const model::Drawing& drawing, double scale, TagId tag) {
  std::vector<Item> items;
  for (const model::Shape& shape : drawing.shapes) {
    if (const auto* path = std::get_if<model::PathShape>(&shape)) {
      items.push_back({tag, place_path(*path, scale)});
    } else {
      for (Item& item : place_text(setting, std::get<model::TextShape>(shape), scale, tag)) items.push_back(std::move(item));
    }
  }
  return items;
}

Item rule(Length left, Length y, Length width, double thickness_pt, Color color) {
  PathItem path;
  path.segments = {{PathSegment::Op::move, {left, y}, {}, {}}, {PathSegment::Op::line, {left + width, y}, {}, {}}};
  path.stroke = color;
  path.stroke_width = std::llround(thickness_pt * static_cast<double>(kPt));
  return {kLayoutArtifact, std::move(path)};
}

Item ground(Box box, Color color) {
  PathItem path;
  path.segments = {{PathSegment::Op::move, {box.left, box.top}, {}, {}},
                   {PathSegment::Op::line, {box.right, box.top}, {}, {}},
                   {PathSegment::Op::line, {box.right, box.bottom}, {}, {}},
                   {PathSegment::Op::line, {box.left, box.bottom}, {}, {}},
                   {PathSegment::Op::close, {}, {}, {}}};
  path.fill = color;
  return {kLayoutArtifact, std::move(path)};
}

}  // namespace benchleaf::page
