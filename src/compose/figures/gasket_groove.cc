// In: a gasket, its seat and its groove. Out: its section at rest, stretched and squeezed, all to one scale.
#include <cmath>
#include <numbers>
#include <utility>
#include <variant>

#include "base/quantity.h"
#include "compose/figures/figures.h"
#include "compose/figures/pen.h"
#include "compose/figures/sketch.h"

namespace benchleaf::compose {

namespace {

using model::Drawing;
using model::Ink;
using model::Mm;

constexpr double kScale = 20;
constexpr double kPart = 40;  // width of each of the three
constexpr double kWall = 3;   // metal round the groove
constexpr double kText = 2.75;
constexpr double kLead = 3.8;  // from line to line of words
constexpr double kPen = 0.25;

struct Words {
  std::string text;
  const model::Fact* fact = nullptr;
};

/// Lines under a part, the first bold.
void write_lines(Drawing& drawing, double middle, double top, const std::vector<Words>& lines) {
  double base = top + kText;
  for (const Words& line : lines) {
    const Writing how{model::TextShape::Anchor::middle, &line == &lines.front()};
    if (line.fact == nullptr)
      write(drawing, {middle, base}, line.text, how);
    else
      write_fact(drawing, {middle, base}, *line.fact, how);
    base += kLead;
  }
}

std::optional<double> millimetres(const std::string& text) {
  const auto read = base::parse_quantity(text);
  const auto* quantity = std::get_if<base::Quantity>(&read);
  if (quantity == nullptr) return std::nullopt;
  const auto value = quantity->value_in(base::Unit::millimetre);
  return value ? std::optional<double>(*value) : std::nullopt;
}

/// Width of the outline with round ends that is as high as the groove is deep and as large as the round was.
double squeezed_width(double section, double depth) {
  return depth + std::numbers::pi * (section * section - depth * depth) / (4 * depth);
}

/// Groove and gasket, closed by the back; `floor` is where the ground of the groove lies.
void add_groove(Drawing& drawing, double middle, double floor, double depth, double width, double squeezed) {
  const double left = middle - width / 2;
  add(drawing, model::rectangle({left - kWall, floor - depth}, width + 2 * kWall, depth + kWall), Ink::ink, Ink::dark_fill, kPen);
  add(drawing, model::rectangle({left, floor - depth}, width, depth), Ink::ink, Ink::paper, kPen);
  add(drawing, model::rectangle({middle - squeezed / 2, floor - depth}, squeezed, depth, depth / 2), Ink::ink, Ink::light_fill,
      kPen);
  add(drawing, model::rectangle({left - kWall, floor - depth - kWall}, width + 2 * kWall, kWall), Ink::ink, Ink::dark_fill, kPen);
}

}  // namespace

std::optional<Figure> gasket_groove(const Asked& asked) {
  const auto series = asked.desk.records.gaskets.find(asked.given(0, "series"));
  if (series == asked.desk.records.gaskets.end()) return std::nullopt;
  const model::Fact* section = asked.desk.fact(series->second, "section");
  const model::Fact* stretched = asked.fact(0, "section-stretched");
  const model::Fact* stretch = asked.fact(0, "stretch");
  const model::Fact* squeeze = asked.fact(0, "squeeze");
  const model::Fact* fill = asked.fact(0, "fill");
  for (const model::Fact* fact : {section, stretched, stretch, squeeze, fill}) {
    if (fact == nullptr || !fact->value) return std::nullopt;
  }
  const std::string depth = asked.given(0, "groove-depth");
  const auto depth_mm = millimetres(depth);
  const auto width_mm = millimetres(asked.given(0, "groove-width"));
  if (!depth_mm || !width_mm) return std::nullopt;

  Drawing drawing;
  const double floor = kWall + *section->value * kScale;
  const auto round = [&](int part, double across) {
    const double radius = across * kScale / 2;
    add(drawing, model::circle({kPart * (part + 0.5), floor - radius}, radius), Ink::ink, Ink::light_fill, kPen);
  };
  round(0, *section->value);
  round(1, *stretched->value);
  add_groove(drawing, kPart * 2.5, floor, *depth_mm * kScale, *width_mm * kScale,
             squeezed_width(*stretched->value, *depth_mm) * kScale);
  const double words = floor + kWall + 2;
  write_lines(drawing, kPart * 0.5, words, {{"at rest", {}}, {{}, section}});
  write_lines(drawing, kPart * 1.5, words, {{"stretched by", {}}, {{}, stretch}, {{}, stretched}});
  write_lines(drawing, kPart * 2.5, words, {{"squeezed by, groove filled to", {}}, {{}, squeeze}, {{}, fill}});
  drawing.width_mm = kPart * 3;
  drawing.height_mm = words + 2 * kLead + kText + 1;
  drawing.alt = "A gasket in section, 20 times its size: at rest " + section->printed + " thick; stretched by " +
                stretch->printed + ", " + stretched->printed + " thick; closed in a groove " + depth + " deep, squeezed by " +
                squeeze->printed + ", the groove filled to " + fill->printed + ".";
  return Figure{std::make_shared<const Drawing>(std::move(drawing)), {model::weaker(section->trust, squeeze->trust), true}};
}

}  // namespace benchleaf::compose
