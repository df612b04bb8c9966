// Out: the symbols of the pictograms for chemicals, drawn from the words of the table; half the diagonal of a diamond is 10, and
// ink stays within |x| + |y| <= 8.
#include "compose/figures/hazard_symbols.h"

#include <array>
#include <utility>

namespace benchleaf::compose {

namespace {

using model::Ink;
using model::Mm;
using model::PathShape;
using model::PathStep;
using Op = PathStep::Op;
using Shapes = std::vector<PathShape>;

constexpr double kPen = 0.7;

PathShape filled(PathShape shape, Ink ink = Ink::ink) {
  shape.fill = ink;
  return shape;
}

PathShape drawn(PathShape shape, double pen = kPen) {
  shape.stroke = Ink::ink;
  shape.stroke_mm = pen;
  return shape;
}

PathShape polygon(const std::vector<Mm>& points) {
  PathShape shape;
  for (const Mm& point : points) shape.steps.push_back({shape.steps.empty() ? Op::move : Op::line, point, {}, {}});
  shape.steps.push_back({Op::close, {}, {}, {}});
  return shape;
}

struct Bend {
  Mm control1, control2, to;
};

PathShape curved(Mm from, const std::vector<Bend>& bends) {
  PathShape shape;
  shape.steps.push_back({Op::move, from, {}, {}});
  for (const Bend& bend : bends) shape.steps.push_back({Op::curve, bend.to, bend.control1, bend.control2});
  return shape;
}

PathShape bar(double left, double right, double y, double high = 0.8) {
  return filled(model::rectangle({left, y}, right - left, high));
}

/// A flame whose foot stands on `foot`, `size` high.
Shapes flame_on(double foot, double size) {
  const auto at = [&](double x, double y) { return Mm{x * size, foot - y * size}; };
  PathShape outer = curved(at(-0.06, 0), {{at(-0.42, 0.06), at(-0.46, 0.4), at(-0.26, 0.62)},
                                          {at(-0.22, 0.52), at(-0.2, 0.5), at(-0.14, 0.46)},
                                          {at(-0.16, 0.7), at(-0.06, 0.88), at(0.1, 1)},
                                          {at(0.06, 0.84), at(0.12, 0.74), at(0.22, 0.62)},
                                          {at(0.44, 0.36), at(0.38, 0.08), at(0.1, 0)},
                                          {at(0.22, 0.12), at(0.2, 0.24), at(0.1, 0.34)},
                                          {at(0.08, 0.26), at(0.04, 0.22), at(-0.02, 0.2)},
                                          {at(-0.1, 0.14), at(-0.12, 0.08), at(-0.06, 0)}});
  return {filled(std::move(outer))};
}

Shapes flame() {
  Shapes shapes = flame_on(3.4, 8.4);
  shapes.push_back(bar(-3.4, 3.4, 4));
  return shapes;
}

Shapes flame_over_circle() {
  Shapes shapes = flame_on(0.4, 6.2);
  shapes.push_back(drawn(model::circle({0, 2.2}, 1.8), 0.9));
  shapes.push_back(bar(-3, 3, 4.6));
  return shapes;
}

Shapes exclamation_mark() {
  PathShape stroke = curved(
      {-1, 2},
      {{{-1.25, -1}, {-1.5, -3}, {-1.5, -4.6}}, {{-1.5, -6.2}, {1.5, -6.2}, {1.5, -4.6}}, {{1.5, -3}, {1.25, -1}, {1, 2}}});
  stroke.steps.push_back({Op::close, {}, {}, {}});
  return {filled(std::move(stroke)), filled(model::circle({0, 4.3}, 1.3))};
}

PathShape bone(Mm from, Mm to) { return drawn(model::line(from, to), 1); }

Shapes skull_and_crossbones() {
  Shapes shapes = {bone({-4.2, 1.6}, {4.2, 4.4}), bone({4.2, 1.6}, {-4.2, 4.4})};
  for (const Mm& end : {Mm{-4.3, 1.2}, Mm{-4.5, 2}, Mm{4.3, 1.2}, Mm{4.5, 2}, Mm{-4.3, 4.7}, Mm{-4, 4}, Mm{4.3, 4.7}, Mm{4, 4}}) {
    if (end.y < 3.5 || end.x > -4.2) shapes.push_back(filled(model::circle(end, 0.6)));
  }
  shapes.push_back(filled(model::circle({0, -2.4}, 3)));
  shapes.push_back(filled(model::rectangle({-1.6, -0.4}, 3.2, 2.4, 0.5)));
  for (const double x : {-1.2, 1.2}) shapes.push_back(filled(model::circle({x, -2}, 0.85), Ink::paper));
  shapes.push_back(filled(polygon({{0, -0.9}, {0.5, 0.1}, {-0.5, 0.1}}), Ink::paper));
  for (const double x : {-0.8, 0.0, 0.8}) shapes.push_back(filled(model::rectangle({x - 0.12, 0.8}, 0.24, 1.2), Ink::paper));
  return shapes;
}

Shapes gas_cylinder() {
  PathShape body = curved({-5.4, 1.6}, {{{-5.4, 0.4}, {-4.8, 0}, {-3.6, -0.2}}});
  for (const Mm& point : {Mm{4, -1.6}, Mm{4.6, 0.8}, Mm{-3, 2.6}}) body.steps.push_back({Op::line, point, {}, {}});
  body.steps.push_back({Op::curve, {-5.4, 1.6}, {-4.4, 2.8}, {-5.2, 2.6}});
  return {filled(std::move(body)), filled(polygon({{4.3, -1.3}, {5.6, -1.2}, {5.8, -0.4}, {4.6, 0.1}}))};
}

/// A vessel that is tilted to pour, its mouth at the point.
Shapes pouring(Mm mouth, double way) {
  const auto at = [&](double x, double y) { return Mm{mouth.x + way * x, mouth.y + y}; };
  Shapes shapes = {drawn(polygon({at(0, 0), at(-3.2, -1.9), at(-2.5, -3.1), at(0.7, -1.2)}), 0.5)};
  for (const double drop : {1.0, 2.3}) shapes.push_back(filled(model::circle(at(0.35, drop), 0.38)));
  return shapes;
}

Shapes corrosion() {
  Shapes shapes = pouring({-1.6, -1.6}, 1);
  for (PathShape& shape : pouring({1.6, -1.6}, -1)) shapes.push_back(std::move(shape));
  // a bar of metal that is eaten, and a hand
  shapes.push_back(
      filled(polygon({{-5.2, 1.8}, {-2.4, 1.8}, {-2, 2.6}, {-1.3, 2.6}, {-0.9, 1.8}, {-0.5, 1.8}, {-0.5, 3}, {-5.2, 3}})));
  PathShape hand = curved(
      {0.4, 2.2}, {{{0.7, 1.7}, {1.1, 1.9}, {1.3, 2.5}}, {{1.8, 2.5}, {2, 1.6}, {2.8, 1.7}}, {{3.6, 1.7}, {4.4, 2}, {5, 2.2}}});
  hand.steps.push_back({Op::line, {4.2, 3.3}, {}, {}});
  hand.steps.push_back({Op::curve, {0.4, 2.2}, {2.8, 3.5}, {1, 3.2}});
  shapes.push_back(filled(std::move(hand)));
  return shapes;
}

Shapes health_hazard() {
  PathShape bust = curved({-3.9, 3.6}, {{{-3.9, 1}, {-3.2, -0.3}, {-1.2, -0.8}}});
  bust.steps.push_back({Op::line, {1.2, -0.8}, {}, {}});
  bust.steps.push_back({Op::curve, {3.9, 3.6}, {3.2, -0.3}, {3.9, 1}});
  bust.steps.push_back({Op::close, {}, {}, {}});
  Shapes shapes = {filled(model::circle({0, -3.6}, 2.1)), filled(std::move(bust))};
  std::vector<Mm> star;  // six points about the chest
  constexpr std::array<Mm, 6> kWays = {Mm{0, -1}, Mm{0.87, -0.5}, Mm{0.87, 0.5}, Mm{0, 1}, Mm{-0.87, 0.5}, Mm{-0.87, -0.5}};
  for (std::size_t i = 0; i < kWays.size(); ++i) {
    const Mm& next = kWays.at((i + 1) % kWays.size());
    star.push_back({kWays.at(i).x * 1.9, 1.4 + kWays.at(i).y * 1.9});
    star.push_back({(kWays.at(i).x + next.x) * 0.4, 1.4 + (kWays.at(i).y + next.y) * 0.4});
  }
  shapes.push_back(filled(polygon(star), Ink::paper));
  return shapes;
}

Shapes environment() {
  Shapes shapes = {bar(-4.8, 4.2, 2.2, 0.5),
                   filled(polygon({{-2.6, 2.2}, {-2.2, -1}, {-2.5, -4.4}, {-1.6, -4.4}, {-1.3, -1}, {-1, 2.2}}))};
  for (const auto& [from, to] : std::vector<std::pair<Mm, Mm>>{
           {{-2, -1.4}, {-3.8, -3}}, {{-1.8, -2.2}, {0.2, -4}}, {{-1.7, -0.2}, {0, -1.8}}, {{-0.6, -3.2}, {-0.4, -4.6}}})
    shapes.push_back(drawn(model::line(from, to), 0.6));
  // a fish on its back, its tail to the right
  PathShape fish = curved({-0.4, 3.8}, {{{0.6, 2.7}, {2, 2.7}, {3, 3.6}}});
  for (const Mm& point : {Mm{3.9, 2.9}, Mm{3.7, 4.2}}) fish.steps.push_back({Op::line, point, {}, {}});
  fish.steps.push_back({Op::line, {3, 3.9}, {}, {}});
  fish.steps.push_back({Op::curve, {-0.4, 3.8}, {2, 4.9}, {0.6, 4.9}});
  shapes.push_back(filled(std::move(fish)));
  shapes.push_back(filled(model::circle({0.5, 3.6}, 0.28), Ink::paper));
  return shapes;
}

Shapes exploding_bomb() {
  Shapes shapes = {filled(model::circle({-0.4, 1.6}, 2.3))};
  for (const auto& [from, to] : std::vector<std::pair<Mm, Mm>>{{{0.8, -1.2}, {2.2, -4.4}},
                                                               {{-0.6, -1.4}, {-0.8, -5.4}},
                                                               {{1.8, -0.4}, {4.8, -2.2}},
                                                               {{-2, -0.8}, {-3.6, -3}},
                                                               {{2.4, 0.8}, {5.4, 0.6}},
                                                               {{-3, 0.8}, {-5.2, 0}},
                                                               {{2.2, 2.6}, {4, 3.6}},
                                                               {{-3, 2.6}, {-4.4, 3.2}}})
    shapes.push_back(drawn(model::line(from, to), 0.7));
  return shapes;
}

struct Symbol {
  std::string_view code;
  Shapes (*draw)();
};

constexpr std::array<Symbol, 9> kSymbols = {{{"GHS01", exploding_bomb},
                                             {"GHS02", flame},
                                             {"GHS03", flame_over_circle},
                                             {"GHS04", gas_cylinder},
                                             {"GHS05", corrosion},
                                             {"GHS06", skull_and_crossbones},
                                             {"GHS07", exclamation_mark},
                                             {"GHS08", health_hazard},
                                             {"GHS09", environment}}};

}  // namespace

std::vector<PathShape> hazard_symbol(std::string_view code) {
  for (const Symbol& symbol : kSymbols) {
    if (symbol.code == code) return symbol.draw();
  }
  return {};
}

}  // namespace benchleaf::compose
