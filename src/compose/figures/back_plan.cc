// In: a kind of back. Out: the watch from its back, lying on its side, with the places where a tool goes in.
#include "compose/figures/back_plan.h"

#include <cmath>
#include <numbers>

#include "compose/figures/pen.h"
#include "compose/figures/sketch.h"

namespace benchleaf::compose {

namespace {

using Anchor = model::TextShape::Anchor;
using model::Drawing;
using model::Ink;
using model::Mm;

constexpr Mm kCentre{25, 14};
constexpr double kCase = 11.5;
constexpr double kBack = 9.5;
constexpr double kPen = 0.25;
constexpr double kThin = 0.15;
constexpr double kNotchDeep = 1.7;
constexpr double kNotchHalf = 1.1;
constexpr int kNotches = 6;

/// Lugs to the left and the right, so that the blade comes from the left as in the section.
void add_lugs(Drawing& drawing) {
  for (const double x : {kCentre.x - 14.5, kCentre.x + 8.5}) {
    for (const double y : {kCentre.y - 8.6, kCentre.y + 5.6})
      add(drawing, model::rectangle({x, y}, 6, 3, 0.8), Ink::ink, Ink::dark_fill, kPen);
  }
}

void add_round_case(Drawing& drawing) {
  add_lugs(drawing);
  add(drawing, model::circle(kCentre, kCase), Ink::ink, Ink::dark_fill, kPen);
}

void add_round_back(Drawing& drawing) {
  add_round_case(drawing);
  add(drawing, model::circle(kCentre, kBack), Ink::ink, Ink::light_fill, kPen);
}

/// A notch in the rim of the back, `turn` degrees from the right.
model::PathShape notch_at(double turn) {
  const double angle = turn * std::numbers::pi / 180;
  const Mm out{std::cos(angle), std::sin(angle)};
  const Mm side{-out.y, out.x};
  const auto at = [&](double along, double across) {
    return Mm{kCentre.x + out.x * along + side.x * across, kCentre.y + out.y * along + side.y * across};
  };
  return outline(
      {at(kBack, -kNotchHalf), at(kBack, kNotchHalf), at(kBack - kNotchDeep, kNotchHalf), at(kBack - kNotchDeep, -kNotchHalf)});
}

/// Half a turn over the top, anticlockwise.
void add_turn(Drawing& drawing) {
  using Op = model::PathStep::Op;
  constexpr double kRound = 4.6;
  constexpr double kBow = kRound * 4 / 3;  // control points of half a circle in one curve
  model::PathShape arc;
  const Mm end{kCentre.x - kRound, kCentre.y + 1};
  arc.steps.push_back({Op::move, {kCentre.x + kRound, kCentre.y + 1}, {}, {}});
  arc.steps.push_back({Op::curve, end, {kCentre.x + kRound, end.y - kBow}, {end.x, end.y - kBow}});
  add(drawing, std::move(arc), Ink::ink, Ink::none, 0.4);
  add_arrow_head(drawing, {end.x, end.y + 1.6}, {0, 1}, 2.2);
}

void add_snap(Drawing& drawing, const BackPlace& place) {
  add_round_back(drawing);
  const double rim = kCentre.x - kBack;
  add(drawing, model::rectangle({rim - 0.4, kCentre.y - 3.2}, 1.6, 6.4, 0.4), Ink::ink, Ink::paper, kPen);
  add(drawing,
      outline({{1, kCentre.y - 2.4},
               {rim, kCentre.y - 2.4},
               {rim + 0.8, kCentre.y - 1.6},
               {rim + 0.8, kCentre.y + 1.6},
               {rim, kCentre.y + 2.4},
               {1, kCentre.y + 2.4}}),
      Ink::ink, Ink::accent, kPen);
  write(drawing, {0, kCentre.y - 3.1}, place.tool);
  write(drawing, {rim + 2.4, kCentre.y + 1}, place.place, {Anchor::start, true});
}

/// The pins of the wrench are two, in notches that lie opposite.
void add_screwed(Drawing& drawing, const BackPlace& place) {
  add_round_back(drawing);
  for (int i = 0; i < kNotches; ++i) {
    const bool pin = i % (kNotches / 2) == 0;
    add(drawing, notch_at(360.0 / kNotches * i), Ink::ink, pin ? Ink::accent : Ink::paper, kPen);
  }
  add_turn(drawing);
  write(drawing, {0, kCentre.y + 1}, place.place, {Anchor::start, true});
  add_leader(drawing, {{7.6, kCentre.y}, {kCentre.x - kBack + 0.6, kCentre.y}});
}

void add_screw(Drawing& drawing, Mm at, const std::string& turn, double aside) {
  add(drawing, model::circle(at, 1.7), Ink::ink, Ink::paper, kPen);
  add(drawing,
      outline({{at.x - 1.35, at.y - 0.4}, {at.x + 1.35, at.y - 0.4}, {at.x + 1.35, at.y + 0.4}, {at.x - 1.35, at.y + 0.4}}),
      Ink::none, Ink::accent, 0);
  write(drawing, {at.x + aside, at.y + 1}, turn, {Anchor::middle, true});
}

/// Numbered crosswise, in the order in which they are loosened.
void add_four_screws(Drawing& drawing) {
  add_lugs(drawing);
  add(drawing, model::rectangle({kCentre.x - 12, kCentre.y - 10.5}, 24, 21, 4), Ink::ink, Ink::dark_fill, kPen);
  add(drawing, model::rectangle({kCentre.x - 10.5, kCentre.y - 9}, 21, 18, 3), Ink::ink, Ink::light_fill, kPen);
  constexpr double kX = 7.6;
  constexpr double kY = 6.1;
  constexpr double kAside = 3.4;
  add_screw(drawing, {kCentre.x - kX, kCentre.y - kY}, "1", kAside);
  add_screw(drawing, {kCentre.x + kX, kCentre.y + kY}, "2", -kAside);
  add_screw(drawing, {kCentre.x + kX, kCentre.y - kY}, "3", -kAside);
  add_screw(drawing, {kCentre.x - kX, kCentre.y + kY}, "4", kAside);
}

void add_none(Drawing& drawing) {
  add_round_case(drawing);
  add(drawing, model::circle(kCentre, kCase - 2.6), Ink::none, Ink::light_fill, kThin);
  write(drawing, {kCentre.x, kCentre.y + 1}, "no seam", {Anchor::middle, true});
}

}  // namespace

void add_back_plan(Drawing& drawing, const BackPlace& place) {
  if (place.back == "snap") add_snap(drawing, place);
  if (place.back == "screwed") add_screwed(drawing, place);
  if (place.back == "four-screws") add_four_screws(drawing);
  if (place.back == "none") add_none(drawing);
}

}  // namespace benchleaf::compose
