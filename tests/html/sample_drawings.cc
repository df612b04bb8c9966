// Pictures for the sample book: a cell in plan and section, an interval bar, a door picture.
#include <cstdio>

#include "html/sample_book.h"

namespace benchleaf::html_tests {

namespace {

using namespace model;

PathShape drawn(PathShape shape, Ink fill, Ink stroke, double width) {
  shape.fill = fill;
  shape.stroke = stroke;
  shape.stroke_mm = width;
  return shape;
}

std::string millimetres(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.1f", value);
  return text;
}

TextShape measure(Mm at, const std::string& text, const std::string& fact) {
  TextShape shape;
  shape.at = at;
  shape.text = text;
  shape.fact = fact;
  return shape;
}

}  // namespace

Drawing cell_drawing(double diameter, double height, const std::string& record) {
  Drawing drawing;
  drawing.true_size = true;
  drawing.width_mm = diameter + 16;
  drawing.height_mm = diameter + height + 11;
  drawing.alt = "Plan and section of the cell: " + millimetres(diameter) + " mm across, " + millimetres(height) + " mm high.";
  const double middle = diameter / 2 + 3, top = diameter + 4;
  drawing.shapes = {
      drawn(circle({middle, diameter / 2 + 1}, diameter / 2), Ink::paper, Ink::ink, 0.25),
      drawn(circle({middle, diameter / 2 + 1}, diameter * 0.4), Ink::none, Ink::ink, 0.15),
      drawn(rectangle({middle - diameter / 2, top + height * 0.2}, diameter, height * 0.8, 0.3), Ink::dark_fill, Ink::ink, 0.2),
      drawn(rectangle({middle - diameter * 0.4, top}, diameter * 0.8, height * 0.5, 0.2), Ink::light_fill, Ink::ink, 0.2)};
  PathShape axis = drawn(line({middle, 0}, {middle, drawing.height_mm - 4}), Ink::none, Ink::second_ink, 0.1);
  axis.dash_mm = {2, 0.5, 0.4, 0.5};
  drawing.shapes.emplace_back(axis);
  drawing.shapes.emplace_back(drawn(line({diameter + 5, top}, {diameter + 5, top + height}), Ink::none, Ink::ink, 0.12));
  drawing.shapes.emplace_back(measure({diameter + 6, top + height / 2 + 1}, millimetres(height), record + "#size.height"));
  drawing.shapes.emplace_back(drawn(line({3, top + height + 2}, {diameter + 3, top + height + 2}), Ink::none, Ink::ink, 0.12));
  drawing.shapes.emplace_back(
      measure({diameter + 4, top + height + 3}, "\xE2\x8C\x80\xE2\x80\x89" + millimetres(diameter), record + "#size.diameter"));
  return drawing;
}

Drawing interval_bar(double low, double high) {
  Drawing drawing;
  drawing.width_mm = 30;
  drawing.height_mm = 3.4;
  drawing.alt = millimetres(low) + " to " + millimetres(high) + " years on a scale of 0 to 8";
  drawing.shapes.emplace_back(drawn(line({0, 3.2}, {30, 3.2}), Ink::none, Ink::rule, 0.2));
  for (int tick = 0; tick <= 4; ++tick) {
    drawing.shapes.emplace_back(drawn(line({tick * 7.5, 0.3}, {tick * 7.5, 3.2}), Ink::none, Ink::rule, 0.2));
  }
  drawing.shapes.emplace_back(drawn(rectangle({low * 30 / 8, 0.9}, (high - low) * 30 / 8, 1.5), Ink::ink, Ink::none, 0));
  return drawing;
}

}  // namespace benchleaf::html_tests
