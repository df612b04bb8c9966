// In: systems of cells with their nominal and end voltages. Out: a bar for each between the two, on one scale of volts.
#include <algorithm>
#include <cmath>
#include <utility>

#include "compose/figures/figures.h"
#include "compose/figures/pen.h"
#include "compose/figures/sketch.h"

namespace benchleaf::compose {

namespace {

using model::Drawing;
using model::Ink;
using model::Mm;

constexpr double kLeft = 44;  // names stand before the bars
constexpr double kMmPerVolt = 24;
constexpr double kTop = 2;
constexpr double kRow = 9;
constexpr double kBar = 5;
constexpr double kText = 2.75;
constexpr double kPen = 0.25;
constexpr double kTick = 1.2;

struct Band {
  std::string name;
  std::string course;  ///< how the voltage gets from one end to the other, in words
  const model::Fact* nominal;
  const model::Fact* end;
};

double at_volt(double volt) { return kLeft + volt * kMmPerVolt; }

/// The bar, the voltages at its ends, and the name of the system with the words for its course.
void add_band(Drawing& drawing, const Band& band, double top) {
  using Anchor = model::TextShape::Anchor;
  const double end = at_volt(*band.end->value);
  const double nominal = at_volt(*band.nominal->value);
  add(drawing, model::rectangle({end, top}, nominal - end, kBar), Ink::ink, Ink::light_fill, kPen);
  const double base = top + kBar / 2 + kText * 0.36;
  write(drawing, {0, base}, band.name, {Anchor::start, true});
  write_fact(drawing, {end - 1, base}, *band.end, {Anchor::end});
  write_fact(drawing, {nominal + 1, base}, *band.nominal);
  write(drawing, {nominal + 14, base}, band.course);
}

/// Whole volts from 0, under the bars.
void add_scale(Drawing& drawing, double y, int volts) {
  add_line(drawing, {{at_volt(0), y}, {at_volt(volts), y}}, 0.2);
  for (int volt = 0; volt <= volts; ++volt) {
    add_line(drawing, {{at_volt(volt), y}, {at_volt(volt), y + kTick}}, 0.2);
    write(drawing, {at_volt(volt), y + kTick + kText + 0.4}, std::to_string(volt) + "\u2009V",
          {model::TextShape::Anchor::middle});
  }
}

std::optional<Band> band_of(const Desk& desk, const model::Node& row) {
  const model::Node* letter = row.find("system");
  const model::Node* course = row.find("course");
  const model::PublishedTable* table = desk.tables.find("cell-systems");
  if (letter == nullptr || course == nullptr || table == nullptr) return std::nullopt;
  const std::string id = "table/cell-systems#" + letter->text + ".";
  const model::Fact* name = desk.derived.facts.find(id + "name");
  const model::Fact* nominal = desk.derived.facts.find(id + "nominal");
  const model::Fact* end = desk.derived.facts.find(id + "end");
  if (name == nullptr || nominal == nullptr || end == nullptr || !nominal->value || !end->value) return std::nullopt;
  return Band{name->printed, course->text, nominal, end};
}

}  // namespace

std::optional<Figure> voltage_bands(const Desk& desk, const model::Node& rows) {
  Drawing drawing;
  drawing.alt = "Bars from end to nominal voltage, on a scale that begins at 0:";
  model::Trust weakest = model::Trust::given;
  double top = kTop;
  double highest = 0;
  for (const model::Node& row : rows.items) {
    const auto band = band_of(desk, row);
    if (!band) return std::nullopt;
    add_band(drawing, *band, top);
    drawing.alt +=
        (top > kTop ? "; " : " ") + band->name + " " + band->end->printed + " to " + band->nominal->printed + ", " + band->course;
    weakest = model::weaker(weakest, model::weaker(band->nominal->trust, band->end->trust));
    highest = std::max(highest, *band->nominal->value);
    top += kRow;
  }
  if (rows.items.empty()) return std::nullopt;
  drawing.alt += ". The bars are no curves.";
  const int volts = static_cast<int>(std::ceil(highest));
  add_scale(drawing, top, volts);
  drawing.width_mm = at_volt(volts) + 30;
  drawing.height_mm = top + kTick + kText + 1.4;
  return Figure{std::make_shared<const Drawing>(std::move(drawing)), {weakest, false}};
}

}  // namespace benchleaf::compose
