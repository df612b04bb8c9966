// In: what a scratch and the grades of a ladder take. Out: the crystal in section, each grade a step further down.
#include <utility>

#include "compose/figures/figures.h"
#include "compose/figures/pen.h"
#include "compose/figures/sketch.h"

namespace benchleaf::compose {

namespace {

using model::Drawing;
using model::Ink;
using model::Mm;

constexpr double kMmPerMicrometre = 0.24;  // so that the words of the last step have room in it
constexpr double kTop = 1;
constexpr double kScratchWidth = 12;
constexpr double kStepWidth = 25;
constexpr double kBelow = 6;  // crystal under the last step
constexpr double kText = 2.75;
constexpr double kPen = 0.25;

/// What one paper, or the polish after the last, takes from the crystal.
struct Taken {
  std::string by;            ///< `P800`, `polish`
  double micrometres = 0;    ///< how deep
  const model::Fact* depth;  ///< the fact that is printed beside it
};

double depth_mm(double micrometres) { return kTop + micrometres * kMmPerMicrometre; }

/// The first paper takes the scratch at its deepest, each further step the pits of the paper before it.
std::optional<std::vector<Taken>> steps_of(const Asked& asked, const model::Fact& scratch, double deepest) {
  std::vector<Taken> steps = {{asked.given(1, "grades"), deepest, &scratch}};
  for (std::size_t row = 1; row < asked.answers.rows.size(); ++row) {
    const model::Fact* pits = asked.fact(row, "ladder-removal");
    if (pits == nullptr || !pits->value) return std::nullopt;
    const bool last = row + 1 == asked.answers.rows.size();
    steps.push_back({last ? std::string("polish") : asked.given(row + 1, "grades"), *pits->value, pits});
  }
  return steps;
}

/// The crystal as the steps leave it, with the scratch in the part that nothing has touched.
void add_crystal(Drawing& drawing, const std::vector<Taken>& steps) {
  using Op = model::PathStep::Op;
  model::PathShape crystal;
  const double scratch = depth_mm(steps.front().micrometres);
  for (const Mm& point : {Mm{0, kTop}, Mm{kScratchWidth / 2 - 1.5, kTop}, Mm{kScratchWidth / 2, scratch},
                          Mm{kScratchWidth / 2 + 1.5, kTop}, Mm{kScratchWidth, kTop}})
    crystal.steps.push_back({crystal.steps.empty() ? Op::move : Op::line, point, {}, {}});
  double left = kScratchWidth;
  double down = 0;
  for (const Taken& step : steps) {
    down += step.micrometres;
    crystal.steps.push_back({Op::line, {left, depth_mm(down)}, {}, {}});
    left += kStepWidth;
    crystal.steps.push_back({Op::line, {left, depth_mm(down)}, {}, {}});
  }
  crystal.steps.push_back({Op::line, {left, depth_mm(down) + kBelow}, {}, {}});
  crystal.steps.push_back({Op::line, {0, depth_mm(down) + kBelow}, {}, {}});
  crystal.steps.push_back({Op::close, {0, kTop}, {}, {}});
  add(drawing, std::move(crystal), Ink::ink, Ink::light_fill, kPen);
}

/// A frame round what a step has taken away, its name and its depth in it.
void add_taken(Drawing& drawing, const Taken& step, double left, double from) {
  model::PathShape frame = model::rectangle({left, depth_mm(from)}, kStepWidth, step.micrometres * kMmPerMicrometre);
  frame.dash_mm = {0.8, 0.8};
  add(drawing, std::move(frame), Ink::second_ink, Ink::none, 0.15);
  const double base = depth_mm(from + step.micrometres / 2) + kText * 0.36;
  write(drawing, {left + 1, base}, step.by, {model::TextShape::Anchor::start, true});
  write_fact(drawing, {left + 11.5, base}, *step.depth);
}

void add_whole(Drawing& drawing, const model::Fact& removal, double micrometres) {
  const double x = kScratchWidth / 2 + 3.4;
  add_measure(drawing, {x, kTop}, {x, depth_mm(micrometres)}, 0.2);
  model::PathShape level = model::line({x - 2, depth_mm(micrometres)}, {kScratchWidth + kStepWidth * 2, depth_mm(micrometres)});
  level.dash_mm = {1.2, 0.6};
  add(drawing, std::move(level), Ink::second_ink, Ink::none, 0.12);
  write(drawing, {x + 2, depth_mm(micrometres) - 1.4}, "in all " + removal.printed);
}

std::string alternative(const std::vector<Taken>& steps, const model::Fact& removal) {
  std::string words = "A crystal in section, to scale in depth, lower after each step:";
  for (const Taken& step : steps) words += (&step == &steps.front() ? " " : ", ") + step.by + " takes " + step.depth->printed;
  return words + "; in all " + removal.printed + ".";
}

}  // namespace

std::optional<Figure> depth_profile(const Asked& asked) {
  if (asked.answers.rows.size() < 2) return std::nullopt;
  const model::Fact* removal = asked.fact(0, "removal");
  const model::Fact* scratch = asked.desk.derived.facts.find("table/bench-rules#" + asked.given(0, "scratch") + ".value");
  if (removal == nullptr || scratch == nullptr || !scratch->high) return std::nullopt;
  const auto steps = steps_of(asked, *scratch, *scratch->high);
  if (!steps) return std::nullopt;
  Drawing drawing;
  add_crystal(drawing, *steps);
  double left = kScratchWidth;
  double down = 0;
  for (const Taken& step : *steps) {
    add_taken(drawing, step, left, down);
    left += kStepWidth;
    down += step.micrometres;
  }
  add_whole(drawing, *removal, down);
  drawing.width_mm = left + kPen;
  drawing.height_mm = depth_mm(down) + kBelow + kPen;
  drawing.alt = alternative(*steps, *removal);
  return Figure{std::make_shared<const Drawing>(std::move(drawing)), {removal->trust, true}};
}

}  // namespace benchleaf::compose
