// Out: a cell in its well, from the side, with the names of what touches it.
#include "compose/figures/cell_in_watch.h"

#include <utility>
#include <vector>

#include "compose/figures/pen.h"
#include "compose/figures/sketch.h"

namespace benchleaf::compose {

namespace {

using model::Drawing;
using model::Ink;
using model::Mm;

constexpr double kPen = 0.25;
constexpr double kSpring = 0.6;
constexpr double kWordsMm = 3.4;  // 9.6 points
constexpr double kWordsAt = 43;

/// A word at the right and its line to what it names.
void name(Drawing& drawing, double y, const char* words, Mm to) {
  Writing how;
  how.height_mm = kWordsMm;
  write(drawing, {kWordsAt, y + 1.2}, words, how);
  add_leader(drawing, {{kWordsAt - 0.8, y}, to});
}

}  // namespace

std::shared_ptr<const Drawing> cell_in_watch() {
  Drawing drawing = picture(65, 32,
                            "A cell in its well, back off: the cell strap lies on the wide face of the can, which is plus; the "
                            "minus leaf presses on the small face below; an insulator stands beside the can.");
  add(drawing, model::rectangle({2, 23.6}, 37, 2), Ink::ink, Ink::dark_fill, kPen);
  add(drawing, model::rectangle({12, 16.4}, 19, 2.6), Ink::ink, Ink::paper, kPen);
  add(drawing, model::rectangle({9, 8}, 25, 8.4), Ink::ink, Ink::light_fill, kPen);
  add_line(drawing, {{4, 23.6}, {4, 7.3}, {31, 7.3}, {33, 5.4}}, kSpring);
  add_line(drawing, {{9, 23.2}, {14, 23.2}, {20, 19.4}, {24, 19.4}}, kSpring);
  add(drawing, model::line({36.4, 8}, {36.4, 23.4}), Ink::accent, Ink::none, kSpring);
  name(drawing, 5.6, "cell strap", {30, 7.1});
  name(drawing, 10.6, "wide face: +", {33.2, 10.6});
  name(drawing, 15.4, "insulator", {36.8, 15.4});
  name(drawing, 19.4, "small face: \u2212", {30.4, 18});
  name(drawing, 23.6, "minus leaf", {23.6, 19.8});
  Writing how;
  how.height_mm = kWordsMm;
  how.ink = Ink::second_ink;
  write(drawing, {2, 31}, "Mostly so; your own sketch decides.", how);
  return std::make_shared<const Drawing>(std::move(drawing));
}

}  // namespace benchleaf::compose
