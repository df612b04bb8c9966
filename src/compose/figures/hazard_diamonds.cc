// In: codes of pictograms. Out: their diamonds, edge to edge.
#include "compose/figures/hazard_diamonds.h"

#include <cmath>
#include <string>
#include <utility>

#include "compose/figures/hazard_symbols.h"
#include "standards/table_view.h"

namespace benchleaf::compose {

namespace {

constexpr double kHalfMm = kDiamondMm * 0.70710678;  // half of the diagonal
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

/// The frame lies inside the diamond's edge: half of its pen and the sine of its corner are taken off.
model::PathShape frame_at(model::Mm centre) {
  const double reach = kHalfMm - kFrameMm * 0.70710678;
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

model::Mm moved(model::Mm at, model::Mm centre) {
  constexpr double kUnit = kHalfMm / 10;
  return {centre.x + at.x * kUnit, centre.y + at.y * kUnit};
}

void add_symbol(model::Drawing& drawing, const Pictogram& pictogram, model::Mm centre) {
  for (model::PathShape shape : hazard_symbol(pictogram.code)) {
    for (model::PathStep& step : shape.steps) {
      step.to = moved(step.to, centre);
      step.control1 = moved(step.control1, centre);
      step.control2 = moved(step.control2, centre);
    }
    shape.stroke_mm *= kHalfMm / 10;
    drawing.shapes.emplace_back(std::move(shape));
  }
}

}  // namespace

std::shared_ptr<const model::Drawing> hazard_diamonds(const model::Tables& tables, const std::vector<std::string>& codes,
                                                      double height_mm) {
  const std::vector<Pictogram> pictograms = known(tables, codes);
  if (pictograms.empty()) return nullptr;
  const double drop = kHalfMm + kGapMm / 2;
  const bool zigzag = pictograms.size() > 1 && height_mm >= 2 * kHalfMm + drop;
  const double step = zigzag ? drop : 2 * kHalfMm + kGapMm;
  model::Drawing drawing;
  drawing.true_size = true;
  drawing.width_mm = 2 * kHalfMm + step * static_cast<double>(pictograms.size() - 1);
  drawing.height_mm = 2 * kHalfMm + (zigzag ? drop : 0);
  drawing.alt = "Pictograms:";
  for (std::size_t i = 0; i < pictograms.size(); ++i) {
    const model::Mm centre{kHalfMm + step * static_cast<double>(i), kHalfMm + (zigzag && i % 2 == 1 ? drop : 0)};
    drawing.shapes.emplace_back(frame_at(centre));
    add_symbol(drawing, pictograms[i], centre);
    drawing.alt += (i == 0 ? " " : ", ") + pictograms[i].shows + " (" + pictograms[i].code + ")";
  }
  drawing.alt += ".";
  return std::make_shared<const model::Drawing>(std::move(drawing));
}

}  // namespace benchleaf::compose
