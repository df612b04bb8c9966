#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "model/drawing.h"
#include "model/fact.h"

namespace benchleaf::compose {

/// How words of a figure are set.
struct Writing {
  model::TextShape::Anchor anchor = model::TextShape::Anchor::start;
  bool bold = false;
  double height_mm = 2.75;
  model::Ink ink = model::Ink::ink;
};

/// Adds words, or what a fact prints, on a baseline.
void write(model::Drawing& drawing, model::Mm at, std::string words, const Writing& how = {});
void write_fact(model::Drawing& drawing, model::Mm at, const model::Fact& fact, const Writing& how = {});
/// The line at the foot of a figure that says how many times its size things are drawn, in the colour of what is second.
void write_scale(model::Drawing& drawing, std::string words);
/// A closed outline through points.
model::PathShape outline(const std::vector<model::Mm>& points);
/// A thin line from a word to what it names.
void add_leader(model::Drawing& drawing, const std::vector<model::Mm>& points);
/// A measure across what is too narrow for heads inside: they come from both sides.
void add_narrow_measure(model::Drawing& drawing, double left, double right, double y);
/// Middle of what a fact states, or its value.
double middle_of(const model::Fact& fact);
/// Whether a sentence names this figure with its unit, and not as part of a longer figure.
bool names_figure(std::string_view sentence, const model::Fact& fact);

}  // namespace benchleaf::compose
