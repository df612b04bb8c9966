// In: codes of pictograms. Out: their diamonds, edge to edge.
#include "compose/figures/hazard_diamonds.h"

#include <optional>
#include <string>
#include <utility>

#include "compose/figures/hazard_symbols.h"
#include "standards/table_view.h"

namespace benchleaf::compose {

namespace {

constexpr double kHalfDiagonal = 0.70710678;  // of a square, by its side
constexpr double kFrameMm = 0.9;
constexpr double kGapMm = 0.4;

struct Pictogram {
  std::string code, shows;
};

std::vector<Pictogram> known(const model::Tables& tables, const std::vector<std::string>& codes) {
  std::vector<Pictogram> found;
  for (const std::string& code : codes) {
    const auto* row = standards::row_of(tables, "ghs-pictograms", code);
    if (row != nullptr) found.push_back({code, standards::cell_text(*row, "name")});
  }
  return found;
}

/// Half of the diagonal of a diamond as small as it may be; 0 where the table does not say.
double half_mm(const model::Tables& tables) {
  const auto* row = standards::row_of(tables, "bench-rules", "hazard-diamond");
  const auto side = row == nullptr ? std::nullopt : standards::cell_value(*row, "value", base::Unit::millimetre);
  return side.value_or(0) * kHalfDiagonal;
}

/// The frame lies inside the diamond's edge: half of its pen and the sine of its corner are taken off.
model::PathShape frame_at(model::Mm centre, double half) {
  const double reach = half - kFrameMm * kHalfDiagonal;
  model::PathShape frame;
  using Op = model::PathStep::Op;
  frame.steps = {{Op::move, {centre.x, centre.y - reach}, {}, {}},
                 {Op::line, {centre.x + reach, centre.y}, {}, {}},
                 {Op::line, {centre.x, centre.y + reach}, {}, {}},
                 {Op::line, {centre.x - reach, centre.y}, {}, {}},
                 {Op::close, {}, {}, {}}};
  frame.fill = model::Ink::paper;
  frame.stroke = model::Ink::safety_red;
  frame.stroke_mm = kFrameMm;
  return frame;
}

model::Mm moved(model::Mm at, model::Mm centre, double unit) { return {centre.x + at.x * unit, centre.y + at.y * unit}; }

void add_symbol(model::Drawing& drawing, const Pictogram& pictogram, model::Mm centre, double half) {
  const double unit = half / 10;
  for (model::PathShape shape : hazard_symbol(pictogram.code)) {
    for (model::PathStep& step : shape.steps) {
      step.to = moved(step.to, centre, unit);
      step.control1 = moved(step.control1, centre, unit);
      step.control2 = moved(step.control2, centre, unit);
    }
    shape.stroke_mm *= unit;
    drawing.shapes.emplace_back(std::move(shape));
  }
}

}  // namespace

std::shared_ptr<const model::Drawing> hazard_diamonds(const model::Tables& tables, const std::vector<std::string>& codes,
                                                      double height_mm) {
  const std::vector<Pictogram> pictograms = known(tables, codes);
  const double half = half_mm(tables);
  if (pictograms.empty() || half <= 0) return nullptr;
  const double drop = half + kGapMm / 2;
  const bool zigzag = pictograms.size() > 1 && height_mm >= 2 * half + drop;
  const double step = zigzag ? drop : 2 * half + kGapMm;
  model::Drawing drawing;
  drawing.true_size = true;
  drawing.width_mm = 2 * half + step * static_cast<double>(pictograms.size() - 1);
  drawing.height_mm = 2 * half + (zigzag ? drop : 0);
  drawing.alt = "Pictograms:";
  for (std::size_t i = 0; i < pictograms.size(); ++i) {
    const model::Mm centre{half + step * static_cast<double>(i), half + (zigzag && i % 2 == 1 ? drop : 0)};
    drawing.shapes.emplace_back(frame_at(centre, half));
    add_symbol(drawing, pictograms[i], centre, half);
    drawing.alt += (i == 0 ? " " : ", ") + pictograms[i].shows + " (" + pictograms[i].code + ")";
  }
  drawing.alt += ".";
  return std::make_shared<const model::Drawing>(std::move(drawing));
}

}  // namespace benchleaf::compose
