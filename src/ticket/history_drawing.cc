// In: earlier visits. Out: how long each cell lasted, and how readings moved, as drawings.
#include "ticket/history_drawing.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/number.h"
#include "base/quantity.h"

namespace benchleaf::ticket {

namespace {

using model::Drawing;
using model::Ink;
using model::Mm;
using Visit = model::Watch::Visit;

constexpr double kWide = 180;
constexpr double kLetter = 3.4;

/// Years with their part: `2028-10-11` to 2028.78.
double year_of(const std::string& date) {
  const double year = std::atof(date.substr(0, 4).c_str());
  const double month = date.size() >= 7 ? std::atof(date.substr(5, 2).c_str()) : 1;
  return year + (month - 1) / 12;
}

void line(Drawing& drawing, Mm from, Mm to, double pen, Ink ink = Ink::ink) {
  model::PathShape shape = model::line(from, to);
  shape.stroke = ink;
  shape.stroke_mm = pen;
  drawing.shapes.emplace_back(std::move(shape));
}

void words(Drawing& drawing, Mm at, std::string text, model::TextShape::Anchor anchor, bool bold = false) {
  model::TextShape shape;
  shape.at = at;
  shape.text = std::move(text);
  shape.height_mm = kLetter;
  shape.anchor = anchor;
  shape.bold = bold;
  drawing.shapes.emplace_back(std::move(shape));
}

void box(Drawing& drawing, Mm at, double width, double height, Ink fill, Ink stroke) {
  model::PathShape shape = model::rectangle(at, width, height);
  shape.fill = fill;
  shape.stroke = stroke;
  shape.stroke_mm = 0.25;
  drawing.shapes.emplace_back(std::move(shape));
}

/// Years on the width of a drawing.
struct Years {
  double first = 0;
  double last = 1;
  double left = 0;
  double right = kWide;
  double x(double year) const { return left + (year - first) / std::max(1.0, last - first) * (right - left); }
};

Years years_of(const std::vector<Visit>& visits, double left, double right) {
  const double first = std::floor(year_of(visits.front().date));
  return {first, std::floor(year_of(visits.back().date)) + 3, left, right};
}

struct Reading {
  double year = 0;
  double value = 0;
  std::string printed;
};

/// A quantity that was read at each visit.
struct Series {
  std::string title;
  std::vector<Reading> readings;
  std::optional<std::pair<double, double>> healthy;
};

void add(Series& series, const Visit& visit, const std::optional<base::Quantity>& quantity, base::Unit unit) {
  if (!is_known(quantity)) return;
  const auto value = quantity->value_in(unit);
  if (value) series.readings.push_back({year_of(visit.date), *value, quantity->figures[0]});
}

std::vector<Series> series_of(const SheetContext& context) {
  Series draw{"draw, \u00B5A", {}, {}};
  Series rate{"rate, s a day", {}, std::pair(-0.5, 0.5)};
  Series old{"old cell on arrival, V", {}, {}};
  for (const Visit& visit : context.watch.visits) {
    add(draw, visit, visit.draw, base::Unit::microampere);
    add(old, visit, visit.old_voltage, base::Unit::volt);
    if (!visit.rate.empty()) rate.readings.push_back({year_of(visit.date), std::atof(visit.rate.c_str()), visit.rate});
  }
  const model::Module* module = context.context.module();
  if (module != nullptr && !module->loads.empty() && is_known(module->loads.front().current)) {
    const auto band = module->loads.front().current->in(base::Unit::microampere);
    if (band) draw.healthy = {band->low, band->high};
  }
  std::vector<Series> all;
  for (Series* one : {&draw, &rate, &old}) {
    if (!one->readings.empty()) all.push_back(std::move(*one));
  }
  return all;
}

void plot(Drawing& drawing, const Series& series, double left, double width) {
  constexpr double kTop = 6;
  constexpr double kFoot = 21;
  double low = series.readings.front().value;
  double high = low;
  const auto take = [&](double value) { low = std::min(low, value), high = std::max(high, value); };
  for (const Reading& one : series.readings) take(one.value);
  if (series.healthy) take(series.healthy->first), take(series.healthy->second);
  const double spare = std::max((high - low) * 0.25, 0.02);
  const auto y = [&](double value) { return kFoot - (value - low + spare) / (high - low + 2 * spare) * (kFoot - kTop); };
  Years years{series.readings.front().year, series.readings.back().year + 1, left + 6, left + width - 6};
  words(drawing, {left, 4}, series.title, model::TextShape::Anchor::start, true);
  if (series.healthy)
    box(drawing, {left, y(series.healthy->second)}, width, y(series.healthy->first) - y(series.healthy->second), Ink::light_fill,
        Ink::none);
  line(drawing, {left, kFoot}, {left + width, kFoot}, 0.25);
  for (std::size_t i = 0; i < series.readings.size(); ++i) {
    const Reading& one = series.readings[i];
    const Mm at{years.x(one.year), y(one.value)};
    if (i > 0) line(drawing, {years.x(series.readings[i - 1].year), y(series.readings[i - 1].value)}, at, 0.4);
    model::PathShape dot = model::circle(at, 0.9);
    dot.fill = Ink::ink;
    drawing.shapes.emplace_back(std::move(dot));
    words(drawing, {at.x, at.y - 1.8}, one.printed, model::TextShape::Anchor::middle, true);
    words(drawing, {at.x, kFoot + 4}, std::to_string(static_cast<int>(one.year)), model::TextShape::Anchor::middle);
  }
  model::PathShape today = model::line({left + width - 4, kTop}, {left + width - 4, kFoot});
  today.stroke = Ink::ink;
  today.stroke_mm = 0.4;
  today.dash_mm = {1, 1};
  drawing.shapes.emplace_back(std::move(today));
  words(drawing, {left + width - 4, kFoot + 4}, "today", model::TextShape::Anchor::middle, true);
}

/// When the cell in the watch is reckoned to end, as a dashed box over its bar; nothing where no life is worked out.
void add_window(const SheetContext& context, const Years& years, double from_year, double top, double height, Drawing& drawing) {
  const model::Fact* life = context.fact("cell-life.life");
  if (life == nullptr || life->unit != "month" || !life->low || !life->high) return;
  constexpr double kMonths = 12;
  const double from = years.x(from_year + *life->low / kMonths);
  const double to = years.x(from_year + *life->high / kMonths);
  if (to > years.right) return;
  model::PathShape window = model::rectangle({from, top - 0.8}, std::max(1.2, to - from), height + 1.6);
  window.stroke = Ink::ink;
  window.stroke_mm = 0.5;
  drawing.shapes.emplace_back(std::move(window));
}

}  // namespace

std::shared_ptr<const Drawing> cell_bars(const SheetContext& context) {
  const auto& visits = context.watch.visits;
  if (visits.size() < 2) return nullptr;
  constexpr double kRow = 6.5;
  Drawing drawing;
  drawing.width_mm = kWide;
  drawing.height_mm = 7 + kRow * static_cast<double>(visits.size());
  drawing.alt =
      "Bars on years: how long each cell lasted, the one in the watch open at its end, with a box where it is reckoned to end.";
  const Years years = years_of(visits, 30, kWide - 4);
  for (double year = years.first; year <= years.last; ++year) {
    line(drawing, {years.x(year), 5}, {years.x(year), drawing.height_mm}, 0.15, Ink::rule);
    words(drawing, {years.x(year), 4}, std::to_string(static_cast<int>(year)), model::TextShape::Anchor::middle);
  }
  for (std::size_t i = 0; i < visits.size(); ++i) {
    const double top = 6 + kRow * static_cast<double>(i);
    const model::Cell* cell = context.desk.cell(visits[i].cell);
    words(drawing, {28, top + 4}, cell == nullptr ? "cell" : compose::cell_key(*cell), model::TextShape::Anchor::end, true);
    const double from = years.x(year_of(visits[i].date));
    const bool in_it = i + 1 == visits.size();
    const double to = in_it ? years.right : years.x(year_of(visits[i + 1].date));
    box(drawing, {from, top + 0.5}, std::max(0.5, to - from), kRow - 1.5, in_it ? Ink::paper : Ink::light_fill, Ink::ink);
    const int months =
        static_cast<int>((year_of(visits[std::min(i + 1, visits.size() - 1)].date) - year_of(visits[i].date)) * 12 + 0.5);
    words(drawing, {from + 1.5, top + 4.2}, in_it ? "in the watch" : std::to_string(months) + " months",
          model::TextShape::Anchor::start);
    if (in_it) add_window(context, years, year_of(visits[i].date), top + 0.5, kRow - 1.5, drawing);
  }
  return std::make_shared<const Drawing>(std::move(drawing));
}

std::shared_ptr<const Drawing> reading_plots(const SheetContext& context) {
  const std::vector<Series> all = series_of(context);
  if (all.empty()) return nullptr;
  Drawing drawing;
  drawing.width_mm = kWide;
  drawing.height_mm = 27;
  drawing.alt = "Readings over the visits, healthy bands in grey, a dashed line for today.";
  const double width = kWide / static_cast<double>(all.size()) - 6;
  for (std::size_t i = 0; i < all.size(); ++i) plot(drawing, all[i], static_cast<double>(i) * (width + 6), width);
  return std::make_shared<const Drawing>(std::move(drawing));
}

}  // namespace benchleaf::ticket
