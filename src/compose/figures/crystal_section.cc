// In: a crystal, its oversize and what holds it. Out: its edge in the seat, in section, with the oversize exaggerated.
#include "compose/figures/crystal_section.h"

#include <algorithm>
#include <utility>
#include <vector>

#include "compose/figures/pen.h"
#include "compose/figures/sketch.h"

namespace benchleaf::compose {

namespace {

using Anchor = model::TextShape::Anchor;
using model::Drawing;
using model::Fixing;
using model::Ink;
using model::Mm;
using model::PathShape;
using Op = model::PathStep::Op;

constexpr double kWidth = 92;
constexpr double kSeat = 32;   // wall of the seat
constexpr double kLedge = 20;  // on which the crystal stands
constexpr double kCaseEnd = 23.4;
constexpr double kEnd = 91;  // where the section breaks off
constexpr double kHeight = 30.6;
constexpr double kMeasure = 25.4;  // line of the measure under the case
constexpr double kPen = 0.25;
constexpr double kKeys = 0;  // words at the left

/// A case with a ledge, its top at `top`; an overhang of `lip` holds the edge down.
void add_case(Drawing& drawing, double top, double lip) {
  std::vector<Mm> points = {{13, kCaseEnd}, {13, top + 3}, {18, top}};
  if (lip > 0)
    points.insert(points.end(), {{kSeat + lip, top}, {kSeat + lip, top + 1}, {kSeat, top + 2.2}});
  else
    points.push_back({kSeat, top});
  points.insert(points.end(), {{kSeat, kLedge}, {kSeat + 12, kLedge}, {kSeat + 12, kCaseEnd}});
  add(drawing, outline(points), Ink::ink, Ink::dark_fill, kPen);
}

/// A dome with a skirt `thick` wide, its edge `shoulder` high; `bevel` is taken off where a lip holds it.
void add_dome(Drawing& drawing, double thick, double shoulder, double bevel) {
  constexpr double kCrown = 2;
  const double inner = kSeat + thick;
  PathShape dome;
  dome.steps = {{Op::move, {kSeat, kLedge}, {}, {}},
                {Op::line, {kSeat, shoulder + bevel}, {}, {}},
                {Op::line, {kSeat + bevel, shoulder}, {}, {}},
                {Op::curve, {74, kCrown}, {kSeat + 10, shoulder - 4.6}, {56, kCrown}},
                {Op::line, {kEnd, kCrown}, {}, {}},
                {Op::line, {kEnd, kCrown + thick}, {}, {}},
                {Op::line, {76, kCrown + thick}, {}, {}},
                {Op::curve, {inner, kLedge}, {60, kCrown + thick}, {inner + 3, kCrown + thick + 3}},
                {Op::close, {kSeat, kLedge}, {}, {}}};
  add(drawing, std::move(dome), Ink::ink, Ink::light_fill, kPen);
}

void add_thickness(Drawing& drawing, double top, const model::Fact& thickness) {
  constexpr double kAt = 86;
  const double thick = middle_of(thickness) * kCrystalScale;
  add_measure(drawing, {kAt, top}, {kAt, top + thick}, 0.2);
  write_fact(drawing, {kAt - 1.4, top + thick / 2 + 1}, thickness, {Anchor::end});
}

/// Where the edge of the free crystal would be, from the least to the most; `edge` is where the seat or the ring stops it.
void add_oversize(Drawing& drawing, double edge, double top, double bottom, const model::Fact& oversize) {
  const auto at = [&](double mm) { return edge - mm / 2 * kOversizeScale; };
  const double most = at(oversize.high.value_or(middle_of(oversize)));
  PathShape free = model::rectangle({most, top}, edge - most, bottom - top);
  free.dash_mm = {0.7, 0.5};
  add(drawing, std::move(free), Ink::ink, Ink::light_fill, 0.2);
  if (oversize.low) {
    PathShape least = model::line({at(*oversize.low), top}, {at(*oversize.low), bottom});
    least.dash_mm = {0.7, 0.5};
    add(drawing, std::move(least), Ink::ink, Ink::none, 0.2);
  }
  add_line(drawing, {{edge, top}, {edge, bottom}}, 0.45);
  for (const double x : {most, edge}) add_leader(drawing, {{x, bottom}, {x, kMeasure + 0.8}});
  add_narrow_measure(drawing, most, edge, kMeasure);
  write(drawing, {edge + 4.2, kMeasure + 1}, "half of");
  write_fact(drawing, {edge + 12.2, kMeasure + 1}, oversize, {Anchor::start, true});
}

/// The word for the wall of the case on which the crystal is measured.
void add_seat_word(Drawing& drawing) {
  write(drawing, {kKeys, kLedge - 1}, "seat");
  add_leader(drawing, {{5.6, kLedge - 2}, {kSeat, kLedge - 2}});
}

void add_press_fit(Drawing& drawing, const CrystalFit& fit) {
  constexpr double kTop = 8.4;
  const double thick = middle_of(*fit.thickness) * kCrystalScale;
  add_case(drawing, kTop, 1.4);
  add_dome(drawing, thick, kTop + 1, 1.4);
  add_oversize(drawing, kSeat, kTop + 2.4, kLedge, *fit.oversize);
  add_thickness(drawing, 2, *fit.thickness);
  write(drawing, {kKeys + 10, 5}, "lip");
  add_leader(drawing, {{14.2, 4}, {kSeat, kTop + 0.5}});
}

void add_tension_ring(Drawing& drawing, const CrystalFit& fit) {
  constexpr double kTop = 11;
  constexpr double kRing = 4;
  const double thick = middle_of(*fit.thickness) * kCrystalScale;
  add_case(drawing, kTop, 0);
  add_dome(drawing, thick, kTop - 1.4, 0.8);
  add(drawing, model::rectangle({kSeat + thick, kLedge - 6.4}, kRing, 6.4), Ink::ink, Ink::dark_fill, kPen);
  add_oversize(drawing, kSeat, kTop + 0.6, kLedge, *fit.oversize);
  add_thickness(drawing, 2, *fit.thickness);
  write(drawing, {kSeat + thick + kRing + 8, kLedge - 1}, fit.holder);
  add_leader(drawing, {{kSeat + thick + kRing + 7.4, kLedge - 2}, {kSeat + thick + kRing / 2, kLedge - 3}});
}

/// The foot of the ring lies under the glass; the ring yields, and so half of the oversize is in its wall.
void add_gasket(Drawing& drawing, const CrystalFit& fit) {
  const double thick = middle_of(*fit.thickness) * kCrystalScale;
  const double wall = *fit.wall->value * kCrystalScale;
  const double ring = kLedge - *fit.height->value * kCrystalScale;
  const double glass = kLedge - wall - thick;
  add_case(drawing, ring + 0.8, 0);
  add(drawing,
      outline({{kSeat, ring},
               {kSeat + wall, ring},
               {kSeat + wall, kLedge - wall},
               {kSeat + 9, kLedge - wall},
               {kSeat + 9, kLedge},
               {kSeat, kLedge}}),
      Ink::ink, Ink::paper, kPen);
  add(drawing, model::rectangle({kSeat + wall, glass}, kEnd - kSeat - wall, thick), Ink::ink, Ink::light_fill, kPen);
  add_oversize(drawing, kSeat + wall, std::max(ring, glass) + 0.6, kLedge - wall, *fit.oversize);
  add_thickness(drawing, glass, *fit.thickness);
  write(drawing, {kKeys, 4}, fit.holder + ", wall");
  write_fact(drawing, {kKeys + 15.4, 4}, *fit.wall);
  write(drawing, {kKeys, 7.8}, "height");
  write_fact(drawing, {kKeys + 7.6, 7.8}, *fit.height);
  add_leader(drawing, {{26, 4.8}, {kSeat + wall / 2, ring + 0.6}});
}

void add_cemented(Drawing& drawing, const CrystalFit& fit) {
  constexpr double kCement = 1.6;
  const double thick = middle_of(*fit.thickness) * kCrystalScale;
  const double top = kLedge - kCement - thick;
  add_case(drawing, top - 1, 0);
  add(drawing,
      outline({{kSeat, top + 0.8},
               {kSeat + kCement, top + 0.8},
               {kSeat + kCement, kLedge - kCement},
               {kSeat + 9, kLedge - kCement},
               {kSeat + 9, kLedge},
               {kSeat, kLedge}}),
      Ink::ink, Ink::accent, kPen);
  add(drawing, model::rectangle({kSeat + kCement, top}, kEnd - kSeat - kCement, thick), Ink::ink, Ink::light_fill, kPen);
  add_thickness(drawing, top, *fit.thickness);
  write(drawing, {kKeys + 10, 5}, "cement");
  add_leader(drawing, {{19.2, 5}, {kSeat + kCement / 2, top + 2.4}});
}

std::string alternative(const CrystalFit& fit) {
  const std::string thick = fit.thickness->printed + " thick";
  const std::string half = fit.oversize == nullptr ? std::string() : "half of " + fit.oversize->printed;
  if (fit.fixing == Fixing::press_fit)
    return "The edge of a crystal in section: a dome with a skirt, " + thick +
           ", under a lip of the case. Left free, its edge stands " + half + " beyond the wall of the seat.";
  if (fit.fixing == Fixing::tension_ring)
    return "The edge of a crystal in section: a dome with a skirt, " + thick + ", a " + fit.holder +
           " inside the skirt, no lip. Left free, its edge stands " + half + " beyond the wall of the seat.";
  if (fit.fixing == Fixing::gasket)
    return "The edge of a glass in section, " + thick + ", on the foot of an " + fit.holder + " with a wall of " +
           fit.wall->printed + " and " + fit.height->printed + " high, which lies in the seat. The edge of the glass stands " +
           half + " into the wall of the ring.";
  return "The edge of a plate in section, " + thick +
         ", on a ledge of the case, with a seam of cement under it and round it. "
         "It has room in its seat.";
}

bool is_length(const model::Fact* fact) {
  return fact != nullptr && fact->unit == "mm" && (fact->value || (fact->low && fact->high));
}

bool complete(const CrystalFit& fit) {
  if (!is_length(fit.thickness)) return false;
  if (fit.fixing == Fixing::cemented) return true;
  if (!is_length(fit.oversize)) return false;
  if (fit.fixing == Fixing::gasket)
    return !fit.holder.empty() && is_length(fit.wall) && fit.wall->value && is_length(fit.height) && fit.height->value;
  return fit.fixing == Fixing::press_fit || (fit.fixing == Fixing::tension_ring && !fit.holder.empty());
}

std::string scale_words(const CrystalFit& fit) {
  const auto times = [](double scale) { return std::to_string(static_cast<int>(scale)) + " times"; };
  if (fit.oversize == nullptr) return "thickness " + times(kCrystalScale) + " its size";
  return "oversize " + times(kOversizeScale) + " its size, " + (fit.wall == nullptr ? "thickness " : "the rest ") +
         times(kCrystalScale);
}

}  // namespace

std::shared_ptr<const Drawing> crystal_section(const CrystalFit& fit) {
  if (!complete(fit)) return nullptr;
  Drawing drawing;
  drawing.width_mm = kWidth;
  drawing.height_mm = kHeight;
  if (fit.fixing == Fixing::press_fit) add_press_fit(drawing, fit);
  if (fit.fixing == Fixing::tension_ring) add_tension_ring(drawing, fit);
  if (fit.fixing == Fixing::gasket) add_gasket(drawing, fit);
  if (fit.fixing == Fixing::cemented) add_cemented(drawing, fit);
  if (fit.fixing != Fixing::cemented) add_seat_word(drawing);
  write_scale(drawing, scale_words(fit));
  drawing.alt = alternative(fit);
  return std::make_shared<const Drawing>(std::move(drawing));
}

}  // namespace benchleaf::compose
