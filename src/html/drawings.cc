// In: a device-neutral drawing in millimetres. Out: inline SVG whose user unit is one millimetre; colours are classes, so
// the style sheet turns them for dark screens and paper.
#include "html/drawings.h"

#include <algorithm>

#include "base/number.h"

namespace benchleaf::html {

namespace {

using model::Ink;
using model::PathShape;
using model::PathStep;
using model::TextShape;

/// Hundredths of a millimetre and one digit more: far below what a screen or printer shows.
std::string coordinate(double mm) { return base::fixed_text(mm, 3, base::Trailing::cut); }

std::string point(model::Mm at) { return coordinate(at.x) + " " + coordinate(at.y); }

ClassName fill_class(Ink ink) {
  switch (ink) {
    case Ink::none: return "fill-none";
    case Ink::paper: return "fill-paper";
    case Ink::ink: return "fill-ink";
    case Ink::second_ink: return "fill-second";
    case Ink::accent: return "fill-accent";
    case Ink::light_fill: return "fill-light";
    case Ink::dark_fill: return "fill-dark";
    case Ink::rule: return "fill-rule";
    case Ink::safety_red: return "fill-red";
    case Ink::safety_orange: return "fill-orange";
    case Ink::safety_yellow: return "fill-yellow";
    case Ink::safety_blue: return "fill-blue";
  }
  return "fill-none";
}

ClassName stroke_class(Ink ink) {
  switch (ink) {
    case Ink::none: return "stroke-none";
    case Ink::paper: return "stroke-paper";
    case Ink::ink: return "stroke-ink";
    case Ink::second_ink: return "stroke-second";
    case Ink::accent: return "stroke-accent";
    case Ink::light_fill: return "stroke-light";
    case Ink::dark_fill: return "stroke-dark";
    case Ink::rule: return "stroke-rule";
    case Ink::safety_red: return "stroke-red";
    case Ink::safety_orange: return "stroke-orange";
    case Ink::safety_yellow: return "stroke-yellow";
    case Ink::safety_blue: return "stroke-blue";
  }
  return "stroke-none";
}

std::string path_data(const PathShape& shape) {
  std::string data;
  for (const PathStep& step : shape.steps) {
    switch (step.op) {
      case PathStep::Op::move: data += "M" + point(step.to); break;
      case PathStep::Op::line: data += "L" + point(step.to); break;
      case PathStep::Op::curve: data += "C" + point(step.control1) + " " + point(step.control2) + " " + point(step.to); break;
      case PathStep::Op::close: data += "Z"; break;
    }
  }
  return data;
}

Markup shape_markup(const PathShape& shape) {
  Element path("path");
  path.in_class(fill_class(shape.fill));
  if (shape.even_odd) path.set("fill-rule", "evenodd");
  if (shape.stroke != Ink::none) {
    path.in_class(stroke_class(shape.stroke)).set("stroke-width", coordinate(shape.stroke_mm));
    std::string dashes;
    for (double dash : shape.dash_mm) dashes += (dashes.empty() ? "" : " ") + coordinate(dash);
    if (!dashes.empty()) path.set("stroke-dasharray", dashes);
  }
  return path.set("d", path_data(shape));
}

Markup shape_markup(const TextShape& shape) {
  Element text("text");
  text.in_class(fill_class(shape.ink));
  if (shape.bold) text.in_class("bold");
  text.set("x", coordinate(shape.at.x)).set("y", coordinate(shape.at.y)).set("font-size", coordinate(shape.height_mm));
  if (shape.anchor == TextShape::Anchor::middle) text.set("text-anchor", "middle");
  if (shape.anchor == TextShape::Anchor::end) text.set("text-anchor", "end");
  if (!shape.fact.empty()) text.set("data-fact", shape.fact);
  return text.say(shape.text);
}

Markup shapes_of(const model::Drawing& drawing) {
  Markup out;
  for (const model::Shape& shape : drawing.shapes) {
    out += std::visit([](const auto& one) { return shape_markup(one); }, shape);
  }
  return out;
}

std::string view_box(const model::Drawing& drawing) {
  return "0 0 " + coordinate(drawing.width_mm) + " " + coordinate(drawing.height_mm);
}

}  // namespace

Markup picture(const model::Drawing& drawing) {
  Element svg("svg");
  svg.in_class("drawing").set("role", "img");
  if (!drawing.true_size) svg.in_class("scales");
  svg.set("width", coordinate(drawing.width_mm) + "mm").set("height", coordinate(drawing.height_mm) + "mm");
  svg.set("viewBox", view_box(drawing));
  return svg.add(Element("title").say(drawing.alt.empty() ? "drawing" : drawing.alt)).add(shapes_of(drawing));
}

Markup ornament(const model::Drawing& drawing, ClassName class_name) {
  Element svg("svg");
  svg.in_class(class_name).set("aria-hidden", "true").set("viewBox", view_box(drawing));
  return svg.add(shapes_of(drawing));
}

Markup symbol(const model::Drawing& drawing, const Id& id) {
  return Element("symbol").id(id).set("viewBox", view_box(drawing)).add(shapes_of(drawing));
}

Markup used_symbol(const Id& id, const model::Drawing& drawing, ClassName class_name, std::string_view name) {
  Element svg("svg");
  svg.in_class(class_name).set("viewBox", view_box(drawing));
  if (name.empty()) {
    svg.set("aria-hidden", "true");
  } else {
    svg.set("role", "img").add(Element("title").say(name));
  }
  return svg.add(Element("use").href(Url::within(id)));
}

Markup true_size_bar() {
  model::Drawing bar;
  bar.width_mm = 20.3;
  bar.height_mm = 3;
  bar.alt = "a bar of 20 mm with a tick every 5 mm";
  bar.true_size = true;
  auto add = [&bar](model::Mm from, model::Mm to) {
    PathShape shape = model::line(from, to);
    shape.stroke = Ink::ink;
    shape.stroke_mm = 0.3;
    bar.shapes.emplace_back(std::move(shape));
  };
  add({0.15, 2.85}, {20.15, 2.85});
  for (int tick = 0; tick <= 4; ++tick) {
    const double x = 0.15 + 5.0 * tick;
    add({x, tick % 4 == 0 ? 0.4 : 1.8}, {x, 3});
  }
  return Element("div")
      .in_class("true-size")
      .add(Element("p").say("True size where the bar is 20\xE2\x80\x89mm"))
      .add(picture(bar));
}

Markup blank_line(double width_mm) {
  model::Drawing blank;
  blank.width_mm = std::clamp(width_mm, 5.0, 80.0);
  blank.height_mm = 6;
  blank.alt = "a line to write on";
  PathShape rule = model::line({0, 5.8}, {blank.width_mm, 5.8});
  rule.stroke = Ink::second_ink;
  rule.stroke_mm = 0.2;
  blank.shapes.emplace_back(std::move(rule));
  return picture(blank);
}

Markup tick_box() {
  constexpr double kSideMm = 3.2;
  model::Drawing box;
  box.width_mm = box.height_mm = kSideMm;
  box.alt = "a box to tick";
  PathShape square = model::rectangle({0.2, 0.2}, kSideMm - 0.4, kSideMm - 0.4);
  square.stroke = Ink::ink;
  square.stroke_mm = 0.25;
  box.shapes.emplace_back(std::move(square));
  return Element("span").in_class("tick").add(picture(box));
}

}  // namespace benchleaf::html
