// In: the measures of a gasket or a crystal. Out: a circle or a line at true size, a section enlarged.
#include "label/series_figure.h"

#include <utility>

#include "base/number.h"
#include "compose/figures/sketch.h"

namespace benchleaf::label {

namespace {

using model::Drawing;
using model::Ink;
using model::Mm;

constexpr double kSectionScale = 6;
constexpr double kPenMm = 0.2;
constexpr double kEdgeMm = 0.2;
constexpr double kMostBeside = 0.5;  // of the room: the rest is for words
constexpr double kTickMm = 2.4;

std::optional<double> in_mm(const std::optional<base::Quantity>& quantity) {
  return quantity && quantity->has_value() ? quantity->value_in(base::Unit::millimetre) : std::nullopt;
}

std::string figure(double value) { return base::paper_number(base::shortest_text(base::tidy(value))); }

Drawing framed(double width, double height, const std::string& alt) {
  Drawing drawing = compose::picture(width + 2 * kEdgeMm, height + 2 * kEdgeMm, "");
  drawing.alt = alt;
  return drawing;
}

Drawing circle_of(double size) {
  Drawing drawing = framed(size, size, "A circle at true size, " + figure(size) + " mm across.");
  drawing.true_size = true;
  compose::add(drawing, model::circle({kEdgeMm + size / 2, kEdgeMm + size / 2}, size / 2), Ink::ink, Ink::none, kPenMm);
  return drawing;
}

/// A line as long as the size, ticks at its ends.
Drawing line_of_size(double size) {
  Drawing drawing = framed(size, kTickMm, "A line at true size, " + figure(size) + " mm long.");
  drawing.true_size = true;
  const double middle = kEdgeMm + kTickMm / 2;
  compose::add_line(drawing, {{kEdgeMm, middle}, {kEdgeMm + size, middle}}, kPenMm);
  for (const double x : {kEdgeMm, kEdgeMm + size}) compose::add_line(drawing, {{x, kEdgeMm}, {x, kEdgeMm + kTickMm}}, kPenMm);
  return drawing;
}

void put_into(Drawing& whole, const Drawing& part, Mm by) {
  for (model::Shape shape : part.shapes) {
    if (auto* path = std::get_if<model::PathShape>(&shape)) {
      for (model::PathStep& step : path->steps) {
        for (Mm* at : {&step.to, &step.control1, &step.control2}) at->x += by.x, at->y += by.y;
      }
    }
    whole.shapes.push_back(std::move(shape));
  }
}

}  // namespace

std::shared_ptr<const Drawing> gasket_section(const model::Gasket& series) {
  const auto section = in_mm(series.section);
  const auto wall = in_mm(series.wall);
  const auto height = in_mm(series.height);
  if (section) {
    const double size = *section * kSectionScale;
    Drawing drawing = framed(size, size, "Section, round, 6 times its size.");
    compose::add(drawing, model::circle({kEdgeMm + size / 2, kEdgeMm + size / 2}, size / 2), Ink::ink, Ink::light_fill, kPenMm);
    return std::make_shared<const Drawing>(std::move(drawing));
  }
  if (!wall || !height) return nullptr;
  const double across = *wall * kSectionScale;
  const double high = *height * kSectionScale;
  const bool lipped = series.profile == model::Profile::l;
  Drawing drawing =
      framed(lipped ? 2 * across : across, high,
             lipped ? "Section, L, 6 times its size; the lip is drawn to no scale." : "Section, flat, 6 times its size.");
  const double left = kEdgeMm, top = kEdgeMm, bottom = kEdgeMm + high;
  model::PathShape shape = model::rectangle({left, top}, across, high);
  if (lipped) {
    using Op = model::PathStep::Op;
    shape.steps = {{Op::move, {left, top}, {}, {}},
                   {Op::line, {left + 2 * across, top}, {}, {}},
                   {Op::line, {left + 2 * across, top + across * 0.8}, {}, {}},
                   {Op::line, {left + across, top + across * 0.8}, {}, {}},
                   {Op::line, {left + across, bottom}, {}, {}},
                   {Op::line, {left, bottom}, {}, {}},
                   {Op::close, {}, {}, {}}};
  }
  compose::add(drawing, std::move(shape), Ink::ink, Ink::light_fill, kPenMm);
  return std::make_shared<const Drawing>(std::move(drawing));
}

void add_figures(const std::shared_ptr<const Drawing>& section, const std::optional<base::Quantity>& size,
                 const model::LabelRoom& room, model::Label& label) {
  const auto across = in_mm(size);
  label.beside = section;
  if (!across || *across <= 0) return;
  const double frame = 2 * kEdgeMm;
  if (*across + frame <= room.height_mm && *across + frame <= room.width_mm * kMostBeside) {
    Drawing circle = circle_of(*across);
    const bool inside = section && section->width_mm < *across * 0.6 && section->height_mm < *across * 0.6;
    if (inside) {
      put_into(circle, *section, {(circle.width_mm - section->width_mm) / 2, (circle.height_mm - section->height_mm) / 2});
      circle.alt += " In it: " + section->alt;
    }
    if (inside || !section) label.beside = std::make_shared<const Drawing>(std::move(circle));
    if (inside || !section) return;
  }
  if (*across + frame <= room.width_mm) label.below = std::make_shared<const Drawing>(line_of_size(*across));
}

}  // namespace benchleaf::label
