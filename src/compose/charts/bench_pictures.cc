// Out: small pictures of what is done at the bench, drawn by us from what the thing looks like in section. No measures are
// read off them.
#include <map>
#include <utility>
#include <vector>

#include "compose/charts/panels.h"
#include "compose/figures/sketch.h"

namespace benchleaf::compose {

namespace {

using model::Drawing;
using model::Ink;
using model::Mm;

constexpr double kWidth = 24;
constexpr double kHeight = 15;
constexpr double kPen = 0.3;

Drawing sheet(const char* alt) { return picture(kWidth, kHeight, alt); }

void box(Drawing& drawing, Mm at, double width, double height, Ink fill = Ink::none, double corner = 0.3) {
  add(drawing, model::rectangle(at, width, height, corner), Ink::ink, fill, kPen);
}

void stroke(Drawing& drawing, const std::vector<Mm>& points, double pen = kPen) { add_line(drawing, points, pen); }

void arrow(Drawing& drawing, Mm from, Mm to, Mm way) {
  stroke(drawing, {from, to}, 0.4);
  add_arrow_head(drawing, {to.x + way.x * 0.6, to.y + way.y * 0.6}, way, 2.0);
}

void plus(Drawing& drawing, Mm centre) {
  stroke(drawing, {{centre.x - 1.1, centre.y}, {centre.x + 1.1, centre.y}}, 0.6);
  stroke(drawing, {{centre.x, centre.y - 1.1}, {centre.x, centre.y + 1.1}}, 0.6);
}

void minus(Drawing& drawing, Mm centre) { stroke(drawing, {{centre.x - 1.1, centre.y}, {centre.x + 1.1, centre.y}}, 0.6); }

/// A cell in section, its can (plus) above, its cap (minus) below.
void cell(Drawing& drawing, Mm at) {
  box(drawing, {at.x + 1.6, at.y + 2.2}, 8.8, 2.0, Ink::paper);
  box(drawing, at, 12, 3.2, Ink::light_fill, 0.6);
}

/// The well of a module: floor and walls around a cell of 12 mm.
void well(Drawing& drawing, Mm at) { stroke(drawing, {at, {at.x, at.y + 7}, {at.x + 15, at.y + 7}, {at.x + 15, at.y}}, 0.5); }

Drawing plus_up() {
  Drawing drawing = sheet("A cell in its well: the wide flat face, marked plus, is up; the smaller cap is down.");
  well(drawing, {4.5, 6});
  cell(drawing, {6, 5.6});
  plus(drawing, {12, 2.6});
  minus(drawing, {12, 11.4});
  return drawing;
}

Drawing insulator_in() {
  Drawing drawing = sheet("A cell in its well with an insulating collar between its side and the wall.");
  well(drawing, {4.5, 6});
  cell(drawing, {6, 5.6});
  for (const double x : {4.9, 18.3}) box(drawing, {x, 3.4}, 0.8, 8.4, Ink::ink, 0);
  arrow(drawing, {1, 1.6}, {4.0, 3.2}, {1, 0});
  return drawing;
}

Drawing leaf_touches() {
  Drawing drawing = sheet("A bent leaf spring that presses up against the cap of the cell.");
  cell(drawing, {6, 2.4});
  stroke(drawing, {{3, 12.4}, {8, 12.4}, {11, 7.2}, {13, 6.8}, {14.6, 8.0}}, 0.6);
  stroke(drawing, {{2, 13}, {22, 13}}, 0.5);
  arrow(drawing, {12, 12}, {12, 9.4}, {0, -1});
  return drawing;
}

Drawing reset_contact() {
  Drawing drawing = sheet("A wire that joins the pad marked AC on the board with the plus face of the cell.");
  stroke(drawing, {{1, 13}, {23, 13}}, 0.5);
  box(drawing, {2.2, 11.8}, 4, 1.2, Ink::ink, 0);
  model::TextShape mark;
  mark.at = {4.2, 10.6};
  mark.text = "AC";
  mark.height_mm = 4.3;
  mark.anchor = model::TextShape::Anchor::middle;
  mark.bold = true;
  cell(drawing, {10, 8.6});
  plus(drawing, {16, 6.4});
  stroke(drawing, {{4.2, 7.4}, {4.2, 3}, {12.6, 3}, {12.6, 8.4}}, 0.5);
  drawing.shapes.push_back(std::move(mark));
  return drawing;
}

Drawing strip_pressed() {
  Drawing drawing = sheet("Display above, board below, the conducting strip between them; arrows press the frame down.");
  box(drawing, {3, 3.4}, 18, 2.4, Ink::paper);
  box(drawing, {3, 11.4}, 18, 1.8, Ink::dark_fill);
  for (const double left : {4.0, 17.0}) {
    for (int line = 0; line < 6; ++line) {
      const double x = left + line * 0.55;
      stroke(drawing, {{x, 6}, {x, 11.2}}, line % 2 == 0 ? 0.4 : 0.15);
    }
  }
  arrow(drawing, {5.4, 0.2}, {5.4, 2.2}, {0, 1});
  arrow(drawing, {18.4, 0.2}, {18.4, 2.2}, {0, 1});
  return drawing;
}

/// A domed crystal in section, open below.
void dome(Drawing& drawing, double y) {
  model::PathShape arc;
  using Op = model::PathStep::Op;
  arc.steps.push_back({Op::move, {4, y + 5}, {}, {}});
  arc.steps.push_back({Op::line, {4, y + 3}, {}, {}});
  arc.steps.push_back({Op::curve, {20, y + 3}, {8, y - 0.6}, {16, y - 0.6}});
  arc.steps.push_back({Op::line, {20, y + 5}, {}, {}});
  add(drawing, std::move(arc), Ink::ink, Ink::none, 0.9);
}

Drawing die_on_rim() {
  Drawing drawing = sheet("A claw that grips a domed crystal at its skirt; nothing bears on the dome.");
  dome(drawing, 7);
  for (const double side : {-1.0, 1.0}) {
    const double x = 12 + side * 9.4;
    stroke(drawing, {{12 + side * 3, 1}, {x, 1}, {x, 9.2}, {12 + side * 8.4, 10.4}}, 0.7);
  }
  arrow(drawing, {0.4, 12.4}, {2.0, 12.4}, {1, 0});
  arrow(drawing, {23.6, 12.4}, {22.0, 12.4}, {-1, 0});
  return drawing;
}

Drawing die_on_ring() {
  Drawing drawing = sheet("A hollow die that bears on the edge of the crystal above its ring and clears the dome.");
  dome(drawing, 7.4);
  box(drawing, {4.9, 10.6}, 1.2, 1.9, Ink::ink, 0);
  box(drawing, {17.9, 10.6}, 1.2, 1.9, Ink::ink, 0);
  stroke(drawing, {{3.4, 9.6}, {3.4, 2.4}, {20.6, 2.4}, {20.6, 9.6}}, 0.7);
  arrow(drawing, {12, 0}, {12, 1.2}, {0, 1});
  return drawing;
}

Drawing die_on_case() {
  Drawing drawing = sheet("The lower die holds the ring of the case; the lugs hang free, the module is out.");
  stroke(drawing, {{1, 8.6}, {4.4, 5}, {19.6, 5}, {23, 8.6}}, 0.9);
  stroke(drawing, {{6, 5}, {6, 9}, {18, 9}, {18, 5}}, 0.5);
  box(drawing, {5.2, 9.4}, 13.6, 3.6, Ink::light_fill, 0);
  arrow(drawing, {12, 0.4}, {12, 2.8}, {0, 1});
  return drawing;
}

Drawing die_on_back() {
  Drawing drawing = sheet("The upper die bears on the rim of the back, flat and level; the notch stands over its mark.");
  box(drawing, {4, 6.6}, 16, 1.4, Ink::light_fill, 0.4);
  stroke(drawing, {{2.6, 8.4}, {5, 8.4}, {5, 12.6}, {19, 12.6}, {19, 8.4}, {21.4, 8.4}}, 0.7);
  stroke(drawing, {{4.6, 6.2}, {4.6, 2.8}, {19.4, 2.8}, {19.4, 6.2}}, 0.7);
  arrow(drawing, {12, 0.2}, {12, 1.4}, {0, 1});
  return drawing;
}

const std::map<std::string, Drawing (*)()>& pictures() {
  static const std::map<std::string, Drawing (*)()> kPictures = {
      {"die-on-back", die_on_back}, {"die-on-case", die_on_case},     {"die-on-rim", die_on_rim},
      {"die-on-ring", die_on_ring}, {"insulator-in", insulator_in},   {"leaf-touches", leaf_touches},
      {"plus-up", plus_up},         {"reset-contact", reset_contact}, {"strip-pressed", strip_pressed}};
  return kPictures;
}

}  // namespace

std::shared_ptr<const Drawing> bench_picture(const std::string& name) {
  const auto picture = pictures().find(name);
  return picture == pictures().end() ? nullptr : std::make_shared<const Drawing>(picture->second());
}

std::vector<std::string> bench_picture_names() {
  std::vector<std::string> names;
  for (const auto& [name, draw] : pictures()) names.push_back(name);
  return names;
}

}  // namespace benchleaf::compose
