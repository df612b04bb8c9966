// In: a way into a case. Out: its back from above and its rim in section, the depth of the blade and the gasket to scale.
#include "compose/figures/back_drawing.h"

#include <cmath>
#include <utility>
#include <vector>

#include "compose/figures/back_plan.h"
#include "compose/figures/pen.h"
#include "compose/figures/sketch.h"

namespace benchleaf::compose {

namespace {

using Anchor = model::TextShape::Anchor;
using model::Drawing;
using model::Ink;
using model::Mm;

constexpr double kWidth = 92;
constexpr double kHeight = 29;
constexpr double kEdge = 58;  // outer edge of case and back
constexpr double kTop = 6;    // face of the back
constexpr double kSeam = 12;  // top of the case, on which the back lies
constexpr double kGap = 0.5;
constexpr double kUnder = kSeam - kGap;  // underside of the rim
constexpr double kSlab = 9.5;            // underside of the back inside the rim
constexpr double kEnd = 91;              // where the section breaks off
constexpr double kFloor = 24;
constexpr double kLeg = 3.5;  // wall of boss or thread
constexpr double kPen = 0.25;
constexpr double kTooth = 0.7;

void add_case(Drawing& drawing, const std::vector<Mm>& points) { add(drawing, outline(points), Ink::ink, Ink::dark_fill, kPen); }
void add_back(Drawing& drawing, const std::vector<Mm>& points) { add(drawing, outline(points), Ink::ink, Ink::light_fill, kPen); }
void add_tool(Drawing& drawing, const std::vector<Mm>& points) { add(drawing, outline(points), Ink::ink, Ink::accent, kPen); }

bool has_section(const BackPlace& place) { return place.section != nullptr && place.section->value.has_value(); }

/// The gasket as it is drawn; one whose section is not known as any.
double across_of(const BackPlace& place) {
  constexpr double kAnyMm = 0.7;
  return (has_section(place) ? *place.section->value : kAnyMm) * kBackScale;
}

/// The round of the gasket, which hangs under the back, and its name and thickness at the right.
void add_gasket(Drawing& drawing, double middle, double words, const BackPlace& place) {
  const double radius = across_of(place) / 2;
  const double y = kUnder + radius;
  add(drawing, model::circle({middle, y}, radius), Ink::ink, Ink::paper, kPen);
  add_leader(drawing, {{middle, y}, {words - 0.8, y + 2.6}});
  write(drawing, {words, y + 3.6}, "gasket");
  if (has_section(place)) write_fact(drawing, {words, y + 7.2}, *place.section);
}

void add_seam_word(Drawing& drawing) {
  write(drawing, {kEdge - 3.4, kSeam + 6}, "seam", {Anchor::end});
  add_leader(drawing, {{kEdge - 2.8, kSeam + 5}, {kEdge, kSeam - kGap / 2}});
}

/// From the edge to the tip of the blade, above the back.
void add_depth(Drawing& drawing, double tip, const model::Fact& deepest) {
  constexpr double kLine = 3.6;
  for (const double x : {kEdge, tip}) add_leader(drawing, {{x, kLine - 1}, {x, x == tip ? kUnder : kTop}});
  add_measure(drawing, {kEdge, kLine}, {tip, kLine}, 0.2);
  write(drawing, {kEdge - 1, kLine + 1}, "at most", {Anchor::end});
  write_fact(drawing, {tip + 1, kLine + 1}, deepest, {Anchor::start, true});
}

/// The blade lies on the case and is thinner than the seam at its tip; the lip is the step in the rim above it.
void add_snap(Drawing& drawing, const BackPlace& place) {
  const double across = across_of(place);
  const double tip = kEdge + *place.deepest->value * kBackScale;
  const double gasket = tip + 1.2;
  const double boss = gasket + across;
  const double ledge = kUnder + across;
  const double lip = (kEdge + tip) / 2 + 1;
  const std::vector<Mm> snap = {{boss, ledge + 1.6}, {boss - 0.9, ledge + 2.6}, {boss, ledge + 3.6}};
  add_case(drawing, {{kEdge, kSeam},
                     {gasket, kSeam},
                     {gasket, ledge},
                     {boss, ledge},
                     snap[0],
                     snap[1],
                     snap[2],
                     {boss, kFloor},
                     {kEdge, kFloor}});
  add_back(drawing, {{kEdge, kTop},
                     {kEnd, kTop},
                     {kEnd, kSlab},
                     {boss + kLeg, kSlab},
                     {boss + kLeg, ledge + 4.4},
                     {boss, ledge + 4.4},
                     snap[2],
                     snap[1],
                     snap[0],
                     {boss, kUnder},
                     {lip, kUnder},
                     {lip, kUnder - 1.9},
                     {kEdge, kUnder - 1.9}});
  add_gasket(drawing, (gasket + boss) / 2, boss + kLeg + 1.8, place);
  add_tool(
      drawing,
      {{kEdge - 16, kUnder - 1.5}, {kEdge, kUnder - 1.5}, {lip, kUnder}, {tip, kSeam - 0.2}, {tip, kSeam}, {kEdge - 16, kSeam}});
  add_seam_word(drawing);
  add_depth(drawing, tip, *place.deepest);
}

/// Pairs of points down a thread from `from` on, two a tooth.
std::vector<Mm> thread(double x, double from, int teeth) {
  std::vector<Mm> points;
  for (int i = 0; i < teeth; ++i) {
    points.push_back({x, from + 2 * i});
    points.push_back({x - kTooth, from + 2 * i + 1});
  }
  points.push_back({x, from + 2 * teeth});
  return points;
}

/// Outline of a case with a groove for the gasket in its top, up to `inner`.
std::vector<Mm> grooved(double groove, double across) {
  return {{kEdge, kFloor},         {kEdge, kSeam}, {groove, kSeam}, {groove, kUnder + across}, {groove + across, kUnder + across},
          {groove + across, kSeam}};
}

void add_screwed(Drawing& drawing, const BackPlace& place) {
  constexpr double kNotch = kEdge + 1.4;
  constexpr double kNotchEnd = kEdge + 4.8;
  constexpr double kNotchFloor = kTop + 3.2;
  const double across = across_of(place);
  const double groove = kNotchEnd + 0.6;
  const double wall = groove + across + 2.4;
  const std::vector<Mm> teeth = thread(wall, kSeam + 1, 4);
  std::vector<Mm> ring = grooved(groove, across);
  ring.push_back({wall, kSeam});
  ring.insert(ring.end(), teeth.begin(), teeth.end());
  ring.push_back({wall, kFloor});
  add_case(drawing, ring);
  std::vector<Mm> back = {{kEdge, kUnder},   {kEdge, kTop}, {kNotch, kTop}, {kNotch, kNotchFloor}, {kNotchEnd, kNotchFloor},
                          {kNotchEnd, kTop}, {kEnd, kTop},  {kEnd, kSlab},  {wall + kLeg, kSlab},  {wall + kLeg, teeth.back().y}};
  back.insert(back.end(), teeth.rbegin(), teeth.rend());
  back.push_back({wall, kUnder});
  add_back(drawing, back);
  add_gasket(drawing, groove + across / 2, wall + kLeg + 1.8, place);
  add_tool(drawing, {{kNotch + 0.3, 0.3}, {kNotchEnd - 0.3, 0.3}, {kNotchEnd - 0.3, kNotchFloor}, {kNotch + 0.3, kNotchFloor}});
  write(drawing, {kNotchEnd + 1, 3.6}, place.tool);
  add_seam_word(drawing);
}

void add_four_screws(Drawing& drawing, const BackPlace& place) {
  constexpr double kScrew = kEdge + 5;  // its middle
  constexpr double kHead = 3.4;
  constexpr double kShank = 1.5;
  constexpr double kSlot = kTop + 1.6;
  const double across = across_of(place);
  const double groove = kScrew + kHead + 0.8;
  const double inner = groove + across + 1.6;
  std::vector<Mm> ring = grooved(groove, across);
  ring.push_back({inner, kSeam});
  ring.push_back({inner, kFloor});
  add_case(drawing, ring);
  add_back(drawing, {{kEdge, kTop}, {kEnd, kTop}, {kEnd, kSlab}, {inner, kSlab}, {inner, kUnder}, {kEdge, kUnder}});
  add(drawing,
      outline({{kScrew - kHead, kTop},
               {kScrew + kHead, kTop},
               {kScrew + kHead, kTop + 3},
               {kScrew + kShank, kTop + 3},
               {kScrew + kShank, 21},
               {kScrew - kShank, 21},
               {kScrew - kShank, kTop + 3},
               {kScrew - kHead, kTop + 3}}),
      Ink::ink, Ink::paper, kPen);
  add_gasket(drawing, groove + across / 2, inner + 1.8, place);
  add_tool(drawing, {{kScrew - 1.4, 0.3},
                     {kScrew + 1.4, 0.3},
                     {kScrew + 1.4, 3},
                     {kScrew + 2.6, 4},
                     {kScrew + 2.6, kSlot},
                     {kScrew - 2.6, kSlot},
                     {kScrew - 2.6, 4},
                     {kScrew - 1.4, 3}});
  write(drawing, {kScrew + kHead + 0.6, 3.6}, place.tool);
  add_seam_word(drawing);
}

/// Case and back are one piece; the seam is at the crystal, below.
void add_none(Drawing& drawing) {
  constexpr double kWall = kEdge + 9;
  constexpr double kGlass = kFloor - 6;
  add_case(drawing, {{kEdge, kTop},
                     {kEnd, kTop},
                     {kEnd, kSlab},
                     {kWall + 4, kSlab},
                     {kWall + 4, kGlass - kGap},
                     {kWall, kGlass - kGap},
                     {kWall, kFloor},
                     {kEdge, kFloor}});
  add(drawing, model::rectangle({kWall + kGap, kGlass}, kEnd - kWall - kGap, 4.6), Ink::ink, Ink::paper, kPen);
  write(drawing, {kEnd - 2, kGlass + 3.3}, "crystal", {Anchor::end});
  write(drawing, {kWall + 3, kFloor + 3}, "seam");
  add_leader(drawing, {{kWall + 2.6, kFloor + 1.8}, {kWall + kGap / 2, kFloor - 1.2}});
}

std::string alternative(const BackPlace& place) {
  const std::string gasket = has_section(place) ? " a gasket " + place.section->printed + " thick" : " the gasket";
  if (place.back == "snap")
    return "A back that snaps on. From above: the blade of the " + place.tool + " between the lugs, its edge in the " +
           place.place + " of the rim. In section: the blade lies in the seam between back and case, at most " +
           place.deepest->printed + " deep from the edge; farther in," + gasket + " lies round the boss of the back.";
  if (place.back == "screwed")
    return "A back that is screwed in. From above: each " + place.place +
           " in its rim, two that lie opposite with a pin in them, and an arrow anticlockwise. In section: a pin of the " +
           place.tool + " stands on the floor of its " + place.place + "; under the rim, between seam and thread," + gasket +
           " lies in a groove of the case.";
  if (place.back == "four-screws")
    return "A back with four screws. From above: a screw in each corner, numbered 1 to 4 crosswise. In section: the blade of one "
           "of the " +
           place.tool + " fills the slot of a screw; farther in than the screw," + gasket + " lies in a groove of the case.";
  return "A case without a back. From above: no seam. In section: case and back are one piece, and the seam is round the "
         "crystal.";
}

bool complete(const BackPlace& place) {
  if (place.back == "none") return true;
  if (place.tool.empty()) return false;
  if (place.back == "snap") return !place.place.empty() && place.deepest != nullptr && place.deepest->value.has_value();
  return (place.back == "screwed" && !place.place.empty()) || place.back == "four-screws";
}

constexpr const char* kNoScale = "the rest to no scale";

/// What is drawn to scale, or empty; `drawn` is by how much the whole figure is enlarged.
std::string scale_words(const BackPlace& place, double drawn = 1) {
  if (!has_section(place) && place.back != "snap") return {};
  const std::string times = std::to_string(static_cast<int>(std::lround(kBackScale * drawn))) + " times ";
  if (!has_section(place)) return "depth " + times + "its size";
  return place.back == "snap" ? "depth and gasket " + times + "their size" : "gasket " + times + "its size";
}

void add_section(Drawing& drawing, const BackPlace& place) {
  if (place.back == "snap") add_snap(drawing, place);
  if (place.back == "screwed") add_screwed(drawing, place);
  if (place.back == "four-screws") add_four_screws(drawing, place);
  if (place.back == "none") add_none(drawing);
}

constexpr double kWordsMm = 3.4;  // 9.6 points

/// Adds the shapes of a part, moved and then enlarged; its words in one size.
void add_part(Drawing& drawing, Drawing part, Mm by, double drawn) {
  const auto moved = [&](Mm& at) { at = {(at.x + by.x) * drawn, (at.y + by.y) * drawn}; };
  for (model::Shape& shape : part.shapes) {
    if (auto* path = std::get_if<model::PathShape>(&shape)) {
      path->stroke_mm *= drawn;
      for (model::PathStep& step : path->steps) {
        for (Mm* at : {&step.to, &step.control1, &step.control2}) moved(*at);
      }
    } else if (auto* words = std::get_if<model::TextShape>(&shape)) {
      moved(words->at);
      words->height_mm = kWordsMm;
    }
    drawing.shapes.push_back(std::move(shape));
  }
}

}  // namespace

std::shared_ptr<const Drawing> narrow_back_drawing(const BackPlace& place) {
  if (!complete(place)) return nullptr;
  constexpr double kDrawn = 1.2;
  constexpr double kLeft = 40;   // of the section
  constexpr double kBelow = 26;  // where it begins
  Drawing plan;
  add_back_plan(plan, place);
  Drawing section;
  add_section(section, place);
  Drawing drawing;
  drawing.width_mm = (kWidth - kLeft) * kDrawn;
  drawing.height_mm = (kBelow + kHeight) * kDrawn;
  add_part(drawing, std::move(plan), {0, 0}, kDrawn);
  add_part(drawing, std::move(section), {-kLeft, kBelow}, kDrawn);
  std::vector<std::string> lines = {"no scale"};
  if (const std::string drawn = scale_words(place, kDrawn); place.back != "none" && !drawn.empty()) lines = {drawn, kNoScale};
  for (const std::string& words : lines) {
    drawing.height_mm += kWordsMm;
    Drawing scale;
    scale.width_mm = drawing.width_mm;
    scale.height_mm = drawing.height_mm;
    write_scale(scale, words);
    add_part(drawing, std::move(scale), {0, 0}, 1);
  }
  drawing.alt = alternative(place);
  return std::make_shared<const Drawing>(std::move(drawing));
}

std::shared_ptr<const Drawing> back_drawing(const BackPlace& place) {
  if (!complete(place)) return nullptr;
  Drawing drawing;
  drawing.width_mm = kWidth;
  drawing.height_mm = kHeight;
  add_back_plan(drawing, place);
  add_section(drawing, place);
  const std::string drawn = place.back == "none" ? std::string() : scale_words(place);
  write_scale(drawing, drawn.empty() ? "no scale" : drawn + ", " + kNoScale);
  drawing.alt = alternative(place);
  return std::make_shared<const Drawing>(std::move(drawing));
}

}  // namespace benchleaf::compose
