// In: trust levels, verdicts, signal words, sign numbers. Out: their drawings in a 10 mm box, and their words. The
// general signs follow the proportions of ISO 3864-1: a ring and bar a tenth and 0.08 of the diameter wide, the bar from
// top left to bottom right.
#include "model/signs.h"

#include <array>
#include <utility>

namespace benchleaf::model {

namespace {

constexpr double kOutline = 1.15;

PathShape polyline(const std::vector<Mm>& points, bool closed) {
  PathShape shape;
  for (const Mm& point : points) {
    shape.steps.push_back({shape.steps.empty() ? PathStep::Op::move : PathStep::Op::line, point, {}, {}});
  }
  if (closed) shape.steps.push_back({PathStep::Op::close, {}, {}, {}});
  return shape;
}

PathShape filled(PathShape shape, Ink ink) {
  shape.fill = ink;
  return shape;
}

PathShape stroked(PathShape shape, double width, Ink ink = Ink::ink) {
  shape.stroke = ink;
  shape.stroke_mm = width;
  return shape;
}

Drawing boxed(double height_mm, std::vector<Shape> shapes, std::string alt) {
  Drawing drawing;
  drawing.width_mm = 10;
  drawing.height_mm = height_mm;
  drawing.shapes = std::move(shapes);
  drawing.alt = std::move(alt);
  return drawing;
}

PathShape leaf() { return polyline({{1, 1}, {6.6, 1}, {9, 3.4}, {9, 9}, {1, 9}}, true); }

std::vector<Shape> trust_shapes(Trust trust) {
  const PathShape outline = stroked(leaf(), kOutline);
  const PathShape ring = stroked(circle({5, 5}, 3.75), kOutline);
  switch (trust) {
    case Trust::standard: return {filled(outline, Ink::ink)};
    case Trust::handbook: return {outline, filled(rectangle({1, 1}, 4, 8), Ink::ink)};
    case Trust::dataset:
      return {outline, stroked(line({1, 4.1}, {9, 4.1}), kOutline), stroked(line({1, 6.6}, {9, 6.6}), kOutline)};
    case Trust::trade: return {ring, filled(circle({5, 5}, 1.65), Ink::ink)};
    case Trust::memory: return {ring};
    case Trust::invented: return {stroked(line({1.4, 1.4}, {8.6, 8.6}), 1.7), stroked(line({8.6, 1.4}, {1.4, 8.6}), 1.7)};
    case Trust::given:
      return {stroked(line({5, 1.4}, {5, 8.6}), kOutline), stroked(line({2.8, 1.4}, {7.2, 1.4}), kOutline),
              stroked(line({2.8, 8.6}, {7.2, 8.6}), kOutline)};
  }
  return {};
}

/// A triangle with its point up and its corners cut round, on the base line `bottom`.
PathShape triangle(double inset, double top, double bottom, double corner) {
  const Mm apex{5, top}, right{10 - inset, bottom}, left{inset, bottom};
  auto towards = [corner](Mm from, Mm to) { return Mm{from.x + corner * (to.x - from.x), from.y + corner * (to.y - from.y)}; };
  PathShape shape;
  shape.steps.push_back({PathStep::Op::move, towards(apex, right), {}, {}});
  const std::array<std::array<Mm, 3>, 3> corners = {{{apex, right, left}, {right, left, apex}, {left, apex, right}}};
  for (const auto& [before, at, after] : corners) {
    shape.steps.push_back({PathStep::Op::line, towards(at, before), {}, {}});
    shape.steps.push_back({PathStep::Op::curve, towards(at, after), at, at});
  }
  shape.steps.push_back({PathStep::Op::close, {}, {}, {}});
  return shape;
}

/// Adds an exclamation mark about the middle axis: a stroke from `top` to `foot`, then its dot.
void add_exclamation(PathShape& shape, double top, double foot, double half, double dot_at) {
  const double narrow = half * 0.62;
  const PathShape stroke = polyline({{5 - half, top}, {5 + half, top}, {5 + narrow, foot}, {5 - narrow, foot}}, true);
  const PathShape dot = circle({5, dot_at}, half * 0.95);
  shape.steps.insert(shape.steps.end(), stroke.steps.begin(), stroke.steps.end());
  shape.steps.insert(shape.steps.end(), dot.steps.begin(), dot.steps.end());
}

PathShape exclamation(double top, double foot, double half, double dot_at, Ink ink) {
  PathShape shape;
  add_exclamation(shape, top, foot, half, dot_at);
  return filled(std::move(shape), ink);
}

Drawing mandatory_sign() {
  return boxed(10, {filled(circle({5, 5}, 5), Ink::safety_blue), exclamation(1.7, 6.1, 0.75, 7.6, Ink::paper)},
               "mandatory action");
}

Drawing prohibition_sign() {
  const double reach = 4.5 * 0.7071;
  return boxed(10,
               {filled(stroked(circle({5, 5}, 4.5), 1, Ink::safety_red), Ink::paper),
                stroked(line({5 - reach, 5 - reach}, {5 + reach, 5 + reach}), 0.8, Ink::safety_red)},
               "prohibition");
}

Drawing warning_sign() {
  return boxed(10,
               {filled(triangle(0.1, 0.6, 9.4, 0.1), Ink::ink), filled(triangle(1.15, 1.75, 8.75, 0.06), Ink::safety_yellow),
                exclamation(3.7, 6.5, 0.5, 7.5, Ink::ink)},
               "warning");
}

}  // namespace

Drawing trust_sign(Trust trust, bool derived) {
  std::vector<Shape> shapes = trust_shapes(trust);
  if (derived) shapes.push_back(stroked(line({1, 11.2}, {9, 11.2}), 1.1));
  return boxed(derived ? 12 : 10, std::move(shapes), trust_words(trust, derived));
}

std::string trust_words(Trust trust, bool derived) {
  constexpr std::array<std::string_view, 7> kWords = {"standard", "handbook", "open data set",      "trade practice",
                                                      "recalled", "invented", "given by the reader"};
  std::string words(kWords.at(static_cast<std::size_t>(trust)));
  if (derived) words += ", worked out";
  return words;
}

std::string_view trust_legend(Trust trust) {
  constexpr std::array<std::string_view, 7> kWords = {"standard, with clause", "handbook, paper, textbook", "open data set",
                                                      "trade practice",        "recalled, not re-read",     "invented, demo only",
                                                      "given by the reader"};
  return kWords.at(static_cast<std::size_t>(trust));
}

std::string_view derived_legend() { return "bar: worked out from such a value"; }

Drawing verdict_mark(Verdict verdict, Ink ink) {
  switch (verdict) {
    case Verdict::use: return boxed(10, {stroked(polyline({{1.4, 5.4}, {4, 8}, {8.8, 2.2}}, false), 1.5, ink)}, "use");
    case Verdict::with_limits: {
      PathShape wave;
      wave.steps = {{PathStep::Op::move, {0.8, 6}, {}, {}},
                    {PathStep::Op::curve, {5, 5.2}, {2, 3.4}, {3.6, 4}},
                    {PathStep::Op::curve, {9.2, 4.4}, {6.4, 6.4}, {8, 7}}};
      return boxed(10, {stroked(std::move(wave), 1.4, ink)}, "with limits");
    }
    case Verdict::never: break;
  }
  return boxed(10, {stroked(line({2, 2}, {8, 8}), 1.9, ink), stroked(line({8, 2}, {2, 8}), 1.9, ink)}, "never");
}

std::string_view verdict_words(Verdict verdict) {
  constexpr std::array<std::string_view, 3> kWords = {"no harm", "with care", "never"};
  return kWords.at(static_cast<std::size_t>(verdict));
}

Drawing alert_triangle(Ink ink) {
  PathShape shape = triangle(0.2, 0.8, 9.2, 0.08);
  add_exclamation(shape, 3.2, 6.4, 0.62, 7.7);
  shape.even_odd = true;
  return boxed(10, {filled(std::move(shape), ink)}, "safety alert");
}

std::string_view message_word(Message::Word word) {
  constexpr std::array<std::string_view, 4> kWords = {"DANGER", "WARNING", "CAUTION", "NOTICE"};
  return kWords.at(static_cast<std::size_t>(word));
}

std::optional<Drawing> safety_sign(std::string_view number) {
  if (number.empty()) return std::nullopt;
  switch (number.front()) {
    case 'M': return mandatory_sign();
    case 'P': return prohibition_sign();
    case 'W': return warning_sign();
    default: return std::nullopt;
  }
}

}  // namespace benchleaf::model
