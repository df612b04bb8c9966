// In: diameter and height of a cell. Out: the cell drawn at true size: plan, section, dimension lines.
#include "compose/figures/cell_drawing.h"

#include <algorithm>
#include <string>

#include "compose/figures/sketch.h"

namespace benchleaf::compose {

namespace {

using model::Drawing;
using model::Ink;
using model::Mm;

// Proportions of the drawn type: common button cells look like this; nothing is read off them.
constexpr double kCap = 0.80;  // diameter of the minus cap, share of the cell's
constexpr double kLithiumCap = 0.86;
constexpr double kWall = 0.022;    // wall of the can, share of the diameter
constexpr double kCapRise = 0.16;  // how far the cap stands out of the can, share of the height

constexpr double kSectionPen = 0.2;

// Paper around the cell.
constexpr double kMargin = 1.0;
constexpr double kGap = 2.2;        // between plan and section, section and dimension line
constexpr double kText = 2.75;      // type size
constexpr double kTextWidth = 9.5;  // room for `24.5 mm`
constexpr double kArrow = 0.9;

void add_line(Drawing& drawing, Mm from, Mm to) { add(drawing, model::line(from, to), Ink::ink, Ink::none, 0.1); }

void add_arrow(Drawing& drawing, Mm tip, double along_x, double along_y) {
  add_arrow_head(drawing, tip, {along_x, along_y}, kArrow);
}

void add_fact(Drawing& drawing, const model::Fact& fact, Mm at, model::TextShape::Anchor anchor) {
  model::TextShape text;
  text.at = at;
  text.text = fact.printed;
  text.height_mm = kText;
  text.anchor = anchor;
  text.fact = fact.id;
  drawing.shapes.push_back(std::move(text));
}

void add_plan(Drawing& drawing, Mm centre, double diameter, double cap) {
  const double radius = diameter / 2;
  add(drawing, model::circle(centre, radius), Ink::ink, Ink::none, 0.25);
  add(drawing, model::circle(centre, radius * cap), Ink::second_ink, Ink::none, 0.1);
  const double reach = radius + 0.8;
  for (const Mm& way : {Mm{reach, 0}, Mm{0, reach}}) {
    model::PathShape centre_line = model::line({centre.x - way.x, centre.y - way.y}, {centre.x + way.x, centre.y + way.y});
    centre_line.dash_mm = {1.2, 0.4, 0.3, 0.4};
    add(drawing, std::move(centre_line), Ink::second_ink, Ink::none, 0.08);
  }
}

void add_section(Drawing& drawing, Mm top_left, double diameter, double height, double cap) {
  const double rise = height * kCapRise;
  const double wall = diameter * kWall;
  const double cap_width = diameter * cap;
  add(drawing,
      model::rectangle({top_left.x + (diameter - cap_width) / 2, top_left.y}, cap_width, height / 2, std::min(0.4, rise)),
      Ink::ink, Ink::paper, 0.12);
  const Mm can{top_left.x, top_left.y + rise};
  add(drawing, model::rectangle(can, diameter, height - rise, std::min(0.5, height / 8)), Ink::ink, Ink::dark_fill, 0.2);
  // In a wide flat cell the wall is thicker than the can leaves room for above the filling.
  const double above = std::min(wall, (height - rise) * 0.2);
  add(drawing, model::rectangle({can.x + wall, can.y + above}, diameter - 2 * wall, (height - rise) * 0.62, 0), Ink::none,
      Ink::light_fill, 0);
}

void add_dimensions(Drawing& drawing, Mm top_left, double diameter, double height, const model::Fact& across,
                    const model::Fact& high) {
  const double right = top_left.x + diameter + kGap;
  const double bottom = top_left.y + height;
  add_line(drawing, {top_left.x + diameter * 0.9, top_left.y}, {right + 0.8, top_left.y});
  add_line(drawing, {top_left.x + diameter + 0.4, bottom}, {right + 0.8, bottom});
  add_line(drawing, {right, top_left.y}, {right, bottom});
  add_arrow(drawing, {right, top_left.y}, 0, -1);
  add_arrow(drawing, {right, bottom}, 0, 1);
  add_fact(drawing, high, {right + 1.2, top_left.y + height / 2 + kText * 0.36}, model::TextShape::Anchor::start);
  const double y = bottom + kGap;
  add_line(drawing, {top_left.x, bottom + 0.4}, {top_left.x, y + 0.8});
  add_line(drawing, {top_left.x + diameter, bottom + 0.4}, {top_left.x + diameter, y + 0.8});
  add_line(drawing, {top_left.x, y}, {top_left.x + diameter, y});
  add_arrow(drawing, {top_left.x, y}, -1, 0);
  add_arrow(drawing, {top_left.x + diameter, y}, 1, 0);
  add_fact(drawing, across, {top_left.x + diameter / 2, y + kText + 0.5}, model::TextShape::Anchor::middle);
}

}  // namespace

std::shared_ptr<const Drawing> cell_drawing(const Desk& desk, const model::Cell& cell) {
  const model::Fact* across = desk.fact(cell, "size.diameter");
  const model::Fact* high = desk.fact(cell, "size.height");
  if (across == nullptr || high == nullptr || !across->value || !high->value) return nullptr;
  const double diameter = *across->value;
  const double height = *high->value;
  const double cap = is_lithium(cell) ? kLithiumCap : kCap;
  Drawing drawing;
  drawing.true_size = true;
  const double left = std::max(kMargin, (kTextWidth - diameter) / 2);
  const Mm centre{left + diameter / 2, kMargin + diameter / 2};
  add_plan(drawing, centre, diameter, cap);
  const Mm top_left{left, kMargin + diameter + kGap};
  add_section(drawing, top_left, diameter, height, cap);
  add_dimensions(drawing, top_left, diameter, height, *across, *high);
  drawing.width_mm = left + diameter + kGap + 1.2 + kTextWidth;
  drawing.height_mm = top_left.y + height + kGap + kText + 1.4;
  drawing.alt = "Cell " + cell.designation + " at true size: plan, a circle " + across->printed + " across; section, " +
                high->printed + " high.";
  return std::make_shared<const Drawing>(std::move(drawing));
}

std::shared_ptr<const Drawing> cell_views(const Desk& desk, const model::Cell& cell) {
  const model::Fact* across = desk.fact(cell, "size.diameter");
  const model::Fact* high = desk.fact(cell, "size.height");
  if (across == nullptr || high == nullptr || !across->value || !high->value) return nullptr;
  const double cap = is_lithium(cell) ? kLithiumCap : kCap;
  constexpr double kBetween = 3, kEdge = 0.9, kWidest = 28;  // of the column of the book
  Drawing drawing;
  drawing.true_size = true;
  const double radius = *across->value / 2;
  add_plan(drawing, {kEdge + radius, kEdge + radius}, *across->value, cap);
  const bool beside = 2 * *across->value + kBetween + 2 * kEdge <= kWidest;
  const Mm section = beside ? Mm{kEdge + *across->value + kBetween, kEdge + std::max(0.0, *across->value - *high->value)}
                            : Mm{kEdge, kEdge + *across->value + kGap};
  add_section(drawing, section, *across->value, *high->value, cap);
  drawing.width_mm = section.x + *across->value + kEdge;
  drawing.height_mm = std::max(kEdge + *across->value, section.y + *high->value) + kEdge;
  drawing.alt = "Cell " + cell.designation + " at true size: plan, a circle " + across->printed + " across; section" +
                (beside ? " beside it, " : ", ") + high->printed + " high.";
  return std::make_shared<const Drawing>(std::move(drawing));
}

std::shared_ptr<const Drawing> cell_outline(const model::Fact& diameter, double margin_mm) {
  if (!diameter.value) return nullptr;
  Drawing drawing;
  drawing.true_size = true;
  drawing.width_mm = drawing.height_mm = *diameter.value + 2 * margin_mm;
  const Mm centre{drawing.width_mm / 2, drawing.height_mm / 2};
  add(drawing, model::circle(centre, *diameter.value / 2), Ink::ink, Ink::none, 0.25);
  drawing.alt = "Outline of a cell at true size, a circle " + diameter.printed + " across.";
  return std::make_shared<const Drawing>(std::move(drawing));
}

std::shared_ptr<const Drawing> cell_section(const Desk& desk, const model::Cell& cell) {
  const model::Fact* across = desk.fact(cell, "size.diameter");
  const model::Fact* high = desk.fact(cell, "size.height");
  if (across == nullptr || high == nullptr || !across->value || !high->value) return nullptr;
  Drawing drawing;
  drawing.true_size = true;
  drawing.width_mm = *across->value;
  drawing.height_mm = *high->value;
  const double rise = *high->value * kCapRise;
  const double cap = *across->value * (is_lithium(cell) ? kLithiumCap : kCap);
  add(drawing, model::rectangle({(*across->value - cap) / 2, *high->value / 2}, cap, *high->value / 2, std::min(0.4, rise)),
      Ink::ink, Ink::paper, kSectionPen);
  add(drawing, model::rectangle({0, 0}, *across->value, *high->value - rise, std::min(0.5, *high->value / 8)), Ink::ink,
      Ink::light_fill, kSectionPen);
  drawing.alt = "Section at true size, " + high->printed + " high; the wide face, plus, is up.";
  return std::make_shared<const Drawing>(std::move(drawing));
}

}  // namespace benchleaf::compose
