// In: a watch. Out: what is not known of it, each with how to find it out: common practice of the bench, no source.
#include <array>

#include "compose/ticket/planner.h"

namespace benchleaf::compose {

namespace {

struct Unknown {
  const char* field;
  const char* what;
  const char* how;
  bool (*known)(const model::Watch& watch);
};

constexpr std::array kUnknowns = {
    Unknown{"number", "Number of the job", "Give it one and write it on the bag and on this sheet.",
            [](const model::Watch& watch) { return !watch.number.empty(); }},
    Unknown{"found", "What it does and does not do", "Write it down in a sentence before anything is moved.",
            [](const model::Watch& watch) { return !watch.found.empty(); }},
    Unknown{"symptoms", "What it shows",
            "Press each button once and write down what the display or the hands do. Nothing at all is an answer too.",
            [](const model::Watch& watch) { return !watch.symptoms.empty(); }},
    Unknown{
        "back", "How the back is held",
        "Look round the rim with the loupe: notches mean a thread, four heads mean screws, a lip or a notch means a snap back.",
        [](const model::Watch& watch) { return !watch.back.empty(); }},
    Unknown{
        "case", "Metal and surface of the case",
        "Loupe on the lugs and edges: another colour that shows through means plate. Until it is known, treat it as thin gold.",
        [](const model::Watch& watch) { return watch.case_metal.has_value(); }},
    Unknown{"case.mark", "Mark inside the back", "With the back off, read it with the loupe; none counts as thin.",
            [](const model::Watch& watch) { return watch.case_metal && !watch.case_metal->mark.empty(); }},
    Unknown{"lug-width", "Width between the lugs", "Callipers, bars out, at the holes.",
            [](const model::Watch& watch) { return is_known(watch.lug_width); }},
    Unknown{
        "crystal", "Kind of crystal",
        "Loupe: swirls with soft edges are acrylic, scratches with hard edges are glass. Then warmth at the back of a finger: "
        "acrylic is warm, glass is cool. Until it is known, nothing but soap water touches it.",
        [](const model::Watch& watch) { return !watch.crystal.empty(); }},
    Unknown{"crystal-size.diameter", "Width of the crystal", "Callipers with soft jaws, across the rim, in two directions.",
            [](const model::Watch& watch) { return watch.crystal_size && is_known(watch.crystal_size->diameter); }},
    Unknown{"crystal-size.thickness", "Thickness of the crystal",
            "Out of the case with soft jaws; in it, from the height of the rim. No sanding before it is known.",
            [](const model::Watch& watch) { return watch.crystal_size && is_known(watch.crystal_size->thickness); }},
    Unknown{"scratch", "Depth of the deepest scratch",
            "Draw a nail across it. One that catches is 20 to 60 \u00B5m deep, one that is only seen 2 to 20 \u00B5m.",
            [](const model::Watch& watch) { return is_known(watch.scratch); }},
    Unknown{"module", "Which module it has",
            "With the back off, write down the display, the lamp, how many cells lie in which well, and every mark on the board.",
            [](const model::Watch& watch) { return !watch.module.empty(); }},
    Unknown{
        "cells-found", "Which cells lie in it",
        "Read the can under the loupe, through the opened back: the letters SR, LR or CR, then the figures. No letters counts as "
        "not known, and a leak of it as an old one.",
        [](const model::Watch& watch) { return !watch.cells_found.empty(); }},
    Unknown{"residues", "Whether something has leaked",
            "Loupe on the leaf, its corner and the seam of the cell: white, green, black or oily. None is an answer too.",
            [](const model::Watch& watch) { return !watch.residues.empty(); }},
    Unknown{"inside", "What stays in the case", "Write down what a liquid could reach: film, print, strip, board.",
            [](const model::Watch& watch) { return !watch.inside.empty(); }},
    Unknown{"gasket", "Kind of the back gasket",
            "Lift it with pegwood and look at its section: round, flat or like an L. Keep it to compare, do not measure the seat "
            "by it.",
            [](const model::Watch& watch) { return !watch.gasket.empty(); }},
    Unknown{"gasket-seat", "Seat of the gasket",
            "Callipers on the boss that the gasket is drawn over, in three directions, within 0.05 mm of each other.",
            [](const model::Watch& watch) { return is_known(watch.gasket_seat); }},
    Unknown{"jobs", "What is to be done", "Ask the owner. The plan below is the usual one for what is known.",
            [](const model::Watch& watch) { return !watch.jobs.empty(); }}};

}  // namespace

void Planner::add_checks() {
  for (const Unknown& unknown : kUnknowns) {
    if (!unknown.known(watch)) plan.checks.push_back({unknown.field, unknown.what, unknown.how});
  }
}

}  // namespace benchleaf::compose
