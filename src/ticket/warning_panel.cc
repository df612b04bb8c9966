// Out: the panel with the signal word at the left of the emergency strip.
#include "ticket/warning_panel.h"

#include <utility>

namespace benchleaf::ticket {

std::shared_ptr<const model::Drawing> warning_panel() {
  constexpr double kWide = 30;
  constexpr double kHigh = 13.4;
  model::Drawing panel;
  panel.width_mm = kWide;
  panel.height_mm = kHigh;
  panel.alt = "WARNING";
  model::PathShape ground = model::rectangle({0, 0}, kWide, kHigh);
  ground.fill = model::Ink::safety_orange;
  panel.shapes.emplace_back(std::move(ground));
  model::PathShape triangle;
  using Op = model::PathStep::Op;
  triangle.steps = {
      {Op::move, {4.8, 3.6}, {}, {}}, {Op::line, {8.2, 9.6}, {}, {}}, {Op::line, {1.4, 9.6}, {}, {}}, {Op::close, {}, {}, {}}};
  triangle.fill = model::Ink::ink;
  panel.shapes.emplace_back(std::move(triangle));
  const auto say = [&panel](model::Mm at, const char* words, double high, model::TextShape::Anchor anchor, model::Ink ink) {
    model::TextShape text;
    text.at = at;
    text.text = words;
    text.height_mm = high;
    text.anchor = anchor;
    text.bold = true;
    text.ink = ink;
    panel.shapes.emplace_back(std::move(text));
  };
  say({4.8, 9.1}, "!", 5, model::TextShape::Anchor::middle, model::Ink::safety_orange);
  say({9.2, 8.4}, "WARNING", 4.2, model::TextShape::Anchor::start, model::Ink::ink);
  return std::make_shared<const model::Drawing>(std::move(panel));
}

}  // namespace benchleaf::ticket
