// Out: pictures of what is measured, for the intake card and the forms: outlines, and arrows where the callipers go.
#include "compose/figures/measure_pictures.h"

#include <utility>
#include <vector>

#include "compose/figures/pen.h"
#include "compose/figures/sketch.h"

namespace benchleaf::compose {

namespace {

using model::Drawing;
using model::Ink;
using model::Mm;

constexpr double kWidth = 26;
constexpr double kHeight = 14;
constexpr double kPen = 0.3;

Drawing sheet(const char* alt) { return picture(kWidth, kHeight, alt); }

void stroke(Drawing& drawing, const std::vector<Mm>& points, double pen = kPen) { add_line(drawing, points, pen); }

void box(Drawing& drawing, Mm at, double width, double height, Ink fill) {
  add(drawing, model::rectangle(at, width, height, 0.3), Ink::ink, fill, kPen);
}

void measure(Drawing& drawing, Mm from, Mm to) { add_measure(drawing, from, to, 0.25); }

std::shared_ptr<const Drawing> done(Drawing drawing) { return std::make_shared<const Drawing>(std::move(drawing)); }

}  // namespace

std::shared_ptr<const Drawing> seat_picture() {
  Drawing drawing = sheet("A back in section: a boss stands up from it, a measure goes across the outside of the boss.");
  box(drawing, {2, 11}, 22, 2.2, Ink::dark_fill);
  box(drawing, {6, 7}, 14, 4, Ink::light_fill);
  for (const double x : {5.1, 20.9}) add(drawing, model::circle({x, 10}, 0.9), Ink::ink, Ink::ink, kPen);
  measure(drawing, {6, 4}, {20, 4});
  for (const double x : {6.0, 20.0}) stroke(drawing, {{x, 3}, {x, 7}}, 0.15);
  return done(std::move(drawing));
}

std::shared_ptr<const Drawing> groove_picture() {
  Drawing drawing = sheet("A groove in section with putty in it: one measure is its depth, one its width.");
  stroke(drawing, {{2, 6}, {9, 6}, {9, 12}, {17, 12}, {17, 6}, {24, 6}}, 0.6);
  box(drawing, {9.4, 7.2}, 7.2, 4.5, Ink::light_fill);
  measure(drawing, {9, 3}, {17, 3});
  measure(drawing, {20.5, 6}, {20.5, 12});
  stroke(drawing, {{17, 12}, {22, 12}}, 0.15);
  return done(std::move(drawing));
}

std::shared_ptr<const Drawing> crystal_picture() {
  Drawing drawing = sheet("A crystal from above with a measure across it, and from the side with a measure of its thickness.");
  add(drawing, model::circle({6.5, 6}, 4.6), Ink::ink, Ink::light_fill, kPen);
  measure(drawing, {1.9, 12.4}, {11.1, 12.4});
  box(drawing, {14, 5}, 8, 2.4, Ink::light_fill);
  measure(drawing, {24.4, 5}, {24.4, 7.4});
  return done(std::move(drawing));
}

std::shared_ptr<const Drawing> scratch_picture() {
  Drawing drawing = sheet("A finger nail drawn over a crystal whose face has a notch, the scratch.");
  stroke(drawing, {{2, 9}, {12, 9}, {13, 10.6}, {14, 9}, {24, 9}}, 0.5);
  stroke(drawing, {{2, 13}, {24, 13}}, 0.5);
  stroke(drawing, {{4, 1}, {10, 4}, {12.6, 8.6}, {8, 7}, {2, 5}}, 0.4);
  stroke(drawing, {{16, 6}, {21, 6}}, 0.3);
  add_arrow_head(drawing, {22, 6}, {1, 0}, 1.6);
  return done(std::move(drawing));
}

std::shared_ptr<const Drawing> lugs_picture() {
  Drawing drawing = sheet("A case from above with two lugs; the measure goes from the inside of one to the inside of the other.");
  box(drawing, {5, 1}, 2.6, 6, Ink::light_fill);
  box(drawing, {18.4, 1}, 2.6, 6, Ink::light_fill);
  add(drawing, model::rectangle({3.4, 6}, 19.2, 7.4, 2.4), Ink::ink, Ink::light_fill, kPen);
  measure(drawing, {7.6, 2.8}, {18.4, 2.8});
  return done(std::move(drawing));
}

std::shared_ptr<const Drawing> cell_picture() {
  Drawing drawing = sheet("A cell from the side, the wide can above, the cap below; one measure is its width, one its height.");
  box(drawing, {5.6, 9}, 9.6, 2, Ink::paper);
  box(drawing, {4, 5}, 12.8, 4, Ink::light_fill);
  measure(drawing, {4, 2.4}, {16.8, 2.4});
  measure(drawing, {20, 5}, {20, 11});
  stroke(drawing, {{15.2, 11}, {21.4, 11}}, 0.15);
  return done(std::move(drawing));
}

std::shared_ptr<const Drawing> bore_picture() {
  Drawing drawing = sheet("A case ring in section with a gasket inside it; the measure goes from wall to wall of the ring.");
  for (const double x : {2.0, 19.6}) box(drawing, {x, 6}, 4.4, 7, Ink::dark_fill);
  for (const double x : {7.4, 18.6}) add(drawing, model::circle({x, 10}, 0.9), Ink::ink, Ink::ink, kPen);
  measure(drawing, {6.4, 3.4}, {19.6, 3.4});
  for (const double x : {6.4, 19.6}) stroke(drawing, {{x, 2.4}, {x, 6}}, 0.15);
  return done(std::move(drawing));
}

std::shared_ptr<const Drawing> face_picture() {
  Drawing drawing =
      sheet("A flange in section with a groove in its face; the measure goes between the outer walls of the groove.");
  stroke(drawing, {{2, 7}, {5, 7}, {5, 10}, {8, 10}, {8, 7}, {18, 7}, {18, 10}, {21, 10}, {21, 7}, {24, 7}}, 0.5);
  for (const double x : {6.0, 20.0}) add(drawing, model::circle({x, 9}, 0.9), Ink::ink, Ink::ink, kPen);
  measure(drawing, {5, 3.4}, {21, 3.4});
  for (const double x : {5.0, 21.0}) stroke(drawing, {{x, 2.4}, {x, 7}}, 0.15);
  return done(std::move(drawing));
}

namespace {

constexpr Mm kRingCentre{13, 7};
constexpr double kRingInside = 4.4;
constexpr double kRingOutside = 6;

std::shared_ptr<const Drawing> ring_picture(const char* alt, double measured) {
  Drawing drawing = sheet(alt);
  add(drawing, model::circle(kRingCentre, kRingOutside), Ink::ink, Ink::light_fill, kPen);
  add(drawing, model::circle(kRingCentre, kRingInside), Ink::ink, Ink::paper, kPen);
  measure(drawing, {kRingCentre.x - measured, kRingCentre.y}, {kRingCentre.x + measured, kRingCentre.y});
  return done(std::move(drawing));
}

}  // namespace

std::shared_ptr<const Drawing> gasket_inside_picture() {
  return ring_picture("A gasket from above; the measure goes across its hole.", kRingInside);
}

std::shared_ptr<const Drawing> gasket_outside_picture() {
  return ring_picture("A gasket from above; the measure goes across all of it.", kRingOutside);
}

std::shared_ptr<const Drawing> gasket_measures() {
  Drawing drawing = sheet("A gasket from above with its inside i and its outside o, and cut through with its section c.");
  const Mm centre{6.4, 6};
  add(drawing, model::circle(centre, 5), Ink::ink, Ink::light_fill, kPen);
  add(drawing, model::circle(centre, 3.7), Ink::ink, Ink::paper, kPen);
  measure(drawing, {centre.x - 3.7, centre.y}, {centre.x + 3.7, centre.y});
  measure(drawing, {centre.x - 5, 12.6}, {centre.x + 5, 12.6});
  add(drawing, model::circle({18, 6}, 2.6), Ink::ink, Ink::dark_fill, kPen);
  measure(drawing, {22.4, 3.4}, {22.4, 8.6});
  for (const double y : {3.4, 8.6}) stroke(drawing, {{18, y}, {23.2, y}}, 0.15);
  Writing how;
  how.bold = true;
  how.height_mm = 3;
  write(drawing, {centre.x - 0.4, 5.2}, "i", how);
  write(drawing, {12.4, 13.6}, "o", how);
  write(drawing, {23.6, 7}, "c", how);
  return done(std::move(drawing));
}

std::shared_ptr<const Drawing> section_picture() {
  Drawing drawing = sheet("A round gasket cut through; the measure is the thickness of the round.");
  add(drawing, model::circle({9, 7}, 3.4), Ink::ink, Ink::dark_fill, kPen);
  stroke(drawing, {{9, 3.6}, {18, 3.6}}, 0.15);
  stroke(drawing, {{9, 10.4}, {18, 10.4}}, 0.15);
  measure(drawing, {17, 3.6}, {17, 10.4});
  return done(std::move(drawing));
}

std::shared_ptr<const Drawing> input_picture(std::string_view calculator, std::string_view input) {
  if (calculator == "gasket-fit") {
    if (input == "seat") return seat_picture();
    if (input == "bore") return bore_picture();
    if (input == "face") return face_picture();
    if (input == "old-inside") return gasket_inside_picture();
    if (input == "old-outside") return gasket_outside_picture();
    if (input == "section") return section_picture();
    return input == "groove-depth" || input == "groove-width" ? groove_picture() : nullptr;
  }
  if (calculator == "cell-swap") return input == "diameter" || input == "height" ? cell_picture() : nullptr;
  const bool of_crystal = input == "diameter" || input == "width" || input == "length" || input == "thickness";
  if ((calculator == "crystal-thickness" || calculator == "scratch-ladder") && of_crystal) return crystal_picture();
  return calculator == "scratch-ladder" && input == "scratch" ? scratch_picture() : nullptr;
}

}  // namespace benchleaf::compose
