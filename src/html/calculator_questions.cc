// In: the name of a calculator. Out: the question that it answers on screen, in the words of the bench.
#include "html/calculator_questions.h"

#include <algorithm>
#include <iterator>

namespace benchleaf::html {

namespace {

constexpr CalculatorQuestion kQuestions[] = {
    {"cell-decode", "Cell", "before you buy", "What does this designation mean?", "the marks on the cell", "system, size, drain"},
    {"cell-swap", "Cell", "before you buy", "What fits in its place?", "number or size", "use, with care, never"},
    {"cell-life", "Cell", "before you buy", "How long will it last?", "cell, watch, lamp and alarm", "months, from and to"},
    {"lamp-sag", "Cell", "before you buy", "Does the lamp starve the watch?", "cell, current", "voltage under load"},
    {"crust-dose", "Crust", "before you wipe", "How much does this crust take?", "crust, mass, liquid", "swabs, not a pour"},
    {"rinse", "Crust", "before you wipe", "How often do I rinse?", "swab, water, times", "what is left"},
    {"gasket-fit", "Gasket", "seat measured, back off", "Which gasket fits?", "seat, section, groove", "size, stretch, squeeze"},
    {"old-gasket", "Gasket", "seat measured, back off", "Is the old gasket spent?", "new, now, groove", "set, still pressed by"},
    {"fog-point", "Gasket", "seat measured, back off", "At what cold does it fog?", "air at closing",
     "temperature of the first fog"},
    {"water-pressure", "Gasket", "seat measured, back off", "What does this pressure mean?", "metres or bar",
     "the other; no promise"},
    {"crystal-size", "Crystal", "a scratch, or a new one", "Which crystal fits?", "seat, how it is held",
     "size, stress of a press fit"},
    {"crystal-thickness", "Crystal", "a scratch, or a new one", "Does a flat crystal stand it?", "size, thickness, load",
     "thickness needed"},
    {"scratch-ladder", "Crystal", "a scratch, or a new one", "Where do I start on a scratch?", "depth, crystal, papers",
     "papers in order, what is left"},
    {"gold-margin", "Case", "before you polish", "Will the gold survive polishing?", "mark or layer, paper",
     "passes until the base metal"},
    {"screw-thread", "Screw", "a screw is missing", "Which thread is this?", "diameter, pitch", "the thread by its name"},
    {"bath-mix", "Bottle", "before you mix", "How much concentrate?", "ratio or strength, volume", "two measures"},
    {"mixture-class", "Bottle", "before you mix", "What goes on the label?", "what is in it", "signal word, pictograms"},
    {"fumes", "Bottle", "before you mix", "How much air will it make burn?", "liquid, millilitres", "litres of air"},
    {"vapour", "Bottle", "before you mix", "How much vapour will I breathe?", "liquid, millilitres, room", "share of the limit"},
    {"rate-drift", "Rate", "after a day on the bench", "How far off is that a day?", "ppm or seconds", "seconds a day, a month"},
};

}  // namespace

std::size_t place_of_calculator(std::string_view name) {
  const auto named = [name](const CalculatorQuestion& row) { return row.name == name; };
  return static_cast<std::size_t>(std::find_if(std::begin(kQuestions), std::end(kQuestions), named) - std::begin(kQuestions));
}

const CalculatorQuestion* question_of_calculator(std::string_view name) {
  const std::size_t place = place_of_calculator(name);
  return place == std::size(kQuestions) ? nullptr : &kQuestions[place];
}

}  // namespace benchleaf::html
