#pragma once

#include <string>
#include <variant>
#include <vector>

namespace benchleaf::model {

/// Colour tokens of the look; each output maps them to its own palette.
enum class Ink {
  none,  ///< no fill or no stroke
  paper,
  ink,
  second_ink,
  accent,
  light_fill,  ///< metal in light
  dark_fill,   ///< metal in shade
  rule,        ///< row rule
  safety_red,
  safety_orange,
  safety_yellow,
  safety_blue,
};

struct Mm {
  double x = 0;
  double y = 0;
};

/// One pen movement; curves are cubic with two control points.
struct PathStep {
  enum class Op { move, line, curve, close };
  Op op = Op::move;
  Mm to;
  Mm control1;
  Mm control2;
};

struct PathShape {
  std::vector<PathStep> steps;
  Ink fill = Ink::none;
  Ink stroke = Ink::none;
  double stroke_mm = 0.1;
  std::vector<double> dash_mm;
  bool even_odd = false;
};

struct TextShape {
  enum class Anchor { start, middle, end };
  Mm at;  ///< on the baseline
  std::string text;
  double height_mm = 2.75;  ///< type size
  Anchor anchor = Anchor::start;
  bool bold = false;
  Ink ink = Ink::ink;
  std::string fact;  ///< id of the fact the text prints, or empty
};

using Shape = std::variant<PathShape, TextShape>;

/// A device-neutral picture in millimetres, origin top left, y downwards. On paper it may be set smaller to fit.
struct Drawing {
  double width_mm = 0;
  double height_mm = 0;
  std::vector<Shape> shapes;
  std::string alt;         ///< what the picture shows, in words
  bool true_size = false;  ///< a thing is laid on it or measured against it: never scaled
};

/// Helpers that every drawing needs; coordinates in millimetres.
PathShape circle(Mm centre, double radius_mm);
PathShape rectangle(Mm top_left, double width_mm, double height_mm, double corner_mm = 0);
PathShape line(Mm from, Mm to);

}  // namespace benchleaf::model
