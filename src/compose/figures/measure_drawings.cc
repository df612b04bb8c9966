// In: measures. Out: what a thing is laid on or held against, at true size.
#include "compose/figures/measure_drawings.h"

#include <string>
#include <utility>
#include <variant>

#include "base/quantity.h"
#include "compose/figures/sketch.h"

namespace benchleaf::compose {

namespace {

using model::Drawing;
using model::Ink;
using model::Mm;

constexpr double kLine = 0.2;
constexpr double kRoom = 0.6;
/// How high figures are, as a share of the type.
constexpr double kFigure = 0.71;
/// Between a circle and the figure that it names, as a share of the type.
constexpr double kUnderCircle = 0.17;
/// 11.2 pt, as words.
constexpr double kWordMm = 11.2 * 25.4 / 72;

void write(Drawing& drawing, Mm at, std::string words, double height_mm, bool bold) {
  model::TextShape text;
  text.at = at;
  text.text = std::move(words);
  text.height_mm = height_mm;
  text.anchor = model::TextShape::Anchor::middle;
  text.bold = bold;
  drawing.shapes.push_back(std::move(text));
}

void tick(Drawing& drawing, double x, double y, double length) {
  add(drawing, model::line({x, y}, {x, y + length}), Ink::ink, Ink::none, 0.12);
}

constexpr double kLeft = 3.0;
constexpr double kEdge = 11.5;  // the line that both scales stand on
constexpr int kMillimetres = 85;
constexpr int kSixteenths = 52;

void add_millimetres(Drawing& drawing) {
  for (int mm = 0; mm <= kMillimetres; ++mm) {
    tick(drawing, kLeft + mm, kEdge, mm % 10 == 0 ? -6 : mm % 5 == 0 ? -4.5 : -3);
    if (mm % 10 == 0) write(drawing, {kLeft + mm, kEdge - 7}, std::to_string(mm), kWordMm, true);
  }
}

void add_inches(Drawing& drawing) {
  const auto one_inch = base::parse_quantity("1 in");
  const double inch = std::get<base::Quantity>(one_inch).value_in(base::Unit::millimetre).value();
  for (int part = 0; part <= kSixteenths; ++part) {
    const double length = part % 16 == 0 ? 6 : part % 8 == 0 ? 5 : part % 4 == 0 ? 4 : part % 2 == 0 ? 3 : 2;
    tick(drawing, kLeft + inch * part / 16, kEdge, length);
    if (part % 8 != 0) continue;
    const std::string whole = part < 16 && part > 0 ? "" : std::to_string(part / 16);
    write(drawing, {kLeft + inch * part / 16, kEdge + 10}, whole + (part % 16 == 8 ? "\u00BD" : ""), kWordMm, true);
  }
}

}  // namespace

std::shared_ptr<const Drawing> nest(const std::vector<int>& diameters_mm, double key_mm) {
  if (diameters_mm.empty()) return nullptr;
  Drawing drawing;
  drawing.true_size = true;
  drawing.width_mm = drawing.height_mm = diameters_mm.back() + 2 * kRoom;
  const Mm centre{drawing.width_mm / 2, drawing.height_mm / 2};
  for (const int diameter : diameters_mm) add(drawing, model::circle(centre, diameter / 2.0), Ink::ink, Ink::none, kLine);
  for (const int diameter : diameters_mm) {
    const std::string words = std::to_string(diameter);
    write(drawing, {centre.x, centre.y - diameter / 2.0 + key_mm * (kUnderCircle + kFigure)}, words, key_mm, true);
    drawing.alt += (drawing.alt.empty() ? "Circles at true size: " : ", ") + words;
  }
  drawing.alt += " mm across.";
  return std::make_shared<const Drawing>(std::move(drawing));
}

std::shared_ptr<const Drawing> twin_scale_drawing() {
  Drawing drawing;
  drawing.true_size = true;
  drawing.width_mm = kLeft + kMillimetres + 3;
  drawing.height_mm = kEdge + 11.5;
  add(drawing, model::line({kLeft, kEdge}, {kLeft + kMillimetres, kEdge}), Ink::ink, Ink::none, kLine);
  add_millimetres(drawing);
  add_inches(drawing);
  drawing.alt = "A scale at true size: millimetres above, inches in sixteenths below.";
  return std::make_shared<const Drawing>(std::move(drawing));
}

}  // namespace benchleaf::compose
