// In: words, facts and points. Out: what several figures are made of: words, leaders, measures.
#include "compose/figures/pen.h"

#include <utility>

#include "compose/figures/sketch.h"

namespace benchleaf::compose {

using model::Drawing;
using model::Ink;
using model::Mm;

namespace {

constexpr double kThin = 0.15;
constexpr double kTail = 3.2;  // of an arrow that comes from outside
constexpr double kHead = 1.4;
constexpr double kSmall = 2.4;  // type of the line that says the scale
constexpr double kFoot = 0.7;   // under the last line

/// With plain spaces, since prose has them where a printed figure has thin ones.
std::string plainly_spaced(std::string_view text) {
  std::string out(text);
  for (const std::string_view space : {"\u2009", "\u00A0", "\u202F"}) {
    for (std::size_t at = out.find(space); at != std::string::npos; at = out.find(space)) out.replace(at, space.size(), " ");
  }
  return out;
}

}  // namespace

void write(Drawing& drawing, Mm at, std::string words, const Writing& how) {
  model::TextShape text;
  text.at = at;
  text.text = std::move(words);
  text.height_mm = how.height_mm;
  text.anchor = how.anchor;
  text.bold = how.bold;
  text.ink = how.ink;
  drawing.shapes.push_back(std::move(text));
}

void write_fact(Drawing& drawing, Mm at, const model::Fact& fact, const Writing& how) {
  write(drawing, at, fact.printed, how);
  std::get<model::TextShape>(drawing.shapes.back()).fact = fact.id;
}

void write_scale(Drawing& drawing, std::string words) {
  write(drawing, {drawing.width_mm, drawing.height_mm - kFoot}, std::move(words),
        {model::TextShape::Anchor::end, false, kSmall, Ink::second_ink});
}

model::PathShape outline(const std::vector<Mm>& points) {
  using Op = model::PathStep::Op;
  model::PathShape path;
  for (const Mm& point : points) path.steps.push_back({path.steps.empty() ? Op::move : Op::line, point, {}, {}});
  if (!points.empty()) path.steps.push_back({Op::close, points.front(), {}, {}});
  return path;
}

void add_leader(Drawing& drawing, const std::vector<Mm>& points) { add_line(drawing, points, kThin); }

void add_narrow_measure(Drawing& drawing, double left, double right, double y) {
  add_line(drawing, {{left - kTail, y}, {left, y}}, 0.2);
  add_arrow_head(drawing, {left, y}, {1, 0}, kHead);
  add_line(drawing, {{right, y}, {right + kTail, y}}, 0.2);
  add_arrow_head(drawing, {right, y}, {-1, 0}, kHead);
}

double middle_of(const model::Fact& fact) {
  if (fact.low && fact.high) return (*fact.low + *fact.high) / 2;
  return fact.value.value_or(0);
}

bool names_figure(std::string_view sentence, const model::Fact& fact) {
  const std::string text = plainly_spaced(sentence);
  const std::string figure = plainly_spaced(fact.printed);
  for (std::size_t at = text.find(figure); at != std::string::npos; at = text.find(figure, at + 1)) {
    const bool longer = at > 0 && (text[at - 1] == '.' || (text[at - 1] >= '0' && text[at - 1] <= '9'));
    if (!longer) return true;
  }
  return false;
}

}  // namespace benchleaf::compose
