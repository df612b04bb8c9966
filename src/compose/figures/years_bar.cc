// In: how many months a cell lasts. Out: a bar in years between both ends, with a dot at the middle.
#include "compose/figures/years_bar.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "base/number.h"
#include "compose/figures/pen.h"
#include "compose/figures/sketch.h"

namespace benchleaf::compose {

namespace {

using model::Drawing;
using model::Ink;

constexpr double kMostYears = 8, kEvery = 2;
constexpr double kMmPerYear = kYearsMm / kMostYears;
constexpr double kText = 3.2;  // 9 pt
constexpr double kBarAt = 4.6, kBarPen = 0.55, kDot = 0.7, kTickHalf = 0.9;

double years(double months) { return months / 12; }
double at_year(double year) { return std::clamp(year, 0.0, kMostYears) * kMmPerYear; }

/// `1.6`, down to a tenth of a year. Past the end of the scale no figure is promised: seals and shelves end sooner.
std::string shown(double year) {
  if (year > kMostYears) return "over " + base::shortest_text(kMostYears);
  constexpr double kSlip = 1e-9;
  return base::fixed_text(std::floor(year * 10 + kSlip) / 10, 1);
}

}  // namespace

std::shared_ptr<const Drawing> years_bar(const model::Fact& life) {
  if (!life.low || !life.high) return nullptr;
  const double from = years(*life.low), to = years(*life.high);
  const std::string words = from > kMostYears ? shown(from) : shown(from) + " to " + shown(to);
  Drawing drawing;
  drawing.width_mm = kYearsMm;
  drawing.height_mm = kBarAt + kTickHalf;
  drawing.alt = "Lasts " + words + " years.";
  for (double year = 0; year <= kMostYears; year += kEvery)
    add(drawing, model::line({at_year(year), kBarAt - kTickHalf}, {at_year(year), kBarAt + kTickHalf}), Ink::rule, Ink::none,
        0.15);
  add(drawing, model::line({at_year(from), kBarAt}, {at_year(to), kBarAt}), Ink::ink, Ink::none, kBarPen);
  if (life.value) add(drawing, model::circle({at_year(years(*life.value)), kBarAt}, kDot), Ink::none, Ink::ink, 0);
  write(drawing, {0, kText * 0.85}, words, {model::TextShape::Anchor::start, false, kText});
  return std::make_shared<const Drawing>(std::move(drawing));
}

}  // namespace benchleaf::compose
