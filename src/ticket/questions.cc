// Out: what is asked about a watch, and how each is found out: common practice of the bench, no source.
#include "ticket/questions.h"

#include <array>

namespace benchleaf::compose {

namespace {

using Section = Question::Section;
using Answer = Question::Answer;

constexpr auto kNobodyAsks = nullptr;

constexpr std::array kQuestions = {
    Question{"number", Section::watch, "Number of the job", "Give it one and write it on the bag and on this sheet.",
             Answer::words, "D-004", [](const Planner& planner) { return !planner.watch.number.empty(); }},
    Question{"found", Section::watch, "What it does and does not do", "Write it down in a sentence before anything is moved.",
             Answer::words, "Blank display, white crust at the minus leaf.",
             [](const Planner& planner) { return !planner.watch.found.empty(); }},
    Question{"wants", Section::watch, "What the owner wants", "Ask: worn or kept, original or like new.", Answer::words,
             "Worn again; marks of age may stay.", kNobodyAsks},
    Question{"symptoms", Section::watch, "What it shows",
             "Press each button once and write down what the display or the hands do. Nothing at all is an answer too.",
             Answer::some_of, "", [](const Planner& planner) { return !planner.watch.symptoms.empty(); }},

    Question{
        "module", Section::build, "Which module it has",
        "With the back off, write down the display, the lamp, how many cells lie in which well, and every mark on the board.",
        Answer::one_of, "", [](const Planner& planner) { return !planner.watch.module.empty(); }, true},
    Question{"display", Section::build, "What shows the time", "Where the module is not known.", Answer::one_of, "", kNobodyAsks},
    Question{
        "back", Section::build, "How the back is held",
        "Look round the rim with the loupe: notches mean a thread, four heads mean screws, a lip or a notch means a snap back.",
        Answer::one_of, "", [](const Planner& planner) { return !planner.watch.back.empty(); }},
    Question{
        "case.metal", Section::build, "Metal of the case",
        "Loupe on the lugs and edges: another colour that shows through means plate. Until it is known, no abrasive, paste or polishing cloth touches it.",
        Answer::one_of, "",
        [](const Planner& planner) { return planner.watch.case_metal && !planner.watch.case_metal->metal.empty(); }},
    Question{
        "case.surface", Section::build, "Surface of the case",
        "The colour that is worn last: deep in the links and under the bezel. Gold colour without a mark counts as thin plate.",
        Answer::one_of, "",
        [](const Planner& planner) { return planner.watch.case_metal && !planner.watch.case_metal->surface.empty(); }},
    Question{"case.mark", Section::build, "Mark inside the back",
             "With the back off, read it with the loupe; none counts as thin.", Answer::words, "20 microns",
             [](const Planner& planner) { return planner.watch.case_metal && !planner.watch.case_metal->mark.empty(); }, true},
    Question{
        "lume", Section::build, "Luminous paint",
        "Look through the crystal and shade it with a hand. What glows, or is cream or brown and flakes, or a T or an R on the "
        "dial: stop, leave it closed, into a bag, and ask the office for radiation. Old paint may glow no longer.",
        Answer::one_of, "",
        [](const Planner& planner) { return !planner.watch.lume.empty() || holds(planner.watch.inside, "part/luminous-paint"); }},
    Question{"lug-width", Section::build, "Width between the lugs", "Callipers, bars out, at the holes.", Answer::measure,
             "18 mm",
             [](const Planner& planner) { return is_known(planner.watch.lug_width) || !works_on(planner, jobs_of(planner), "part/spring-bar"); }},

    Question{
        "cells-found", Section::cells, "Which cells lie in it",
        "Read the can under the loupe, through the opened back: the letters SR, LR or CR, then the figures. No letters counts "
        "as not known, and a leak of it as an old one.",
        Answer::some_of, "",
        [](const Planner& planner) { return !planner.watch.cells_found.empty() || planner.watch.cell_size.has_value(); }, true},
    Question{"cell-count", Section::cells, "How many cells", "Count them and the wells, through the opened back.", Answer::number,
             "1", kNobodyAsks},
    Question{"cell-size.diameter", Section::cells, "Width of a cell without marks",
             "Plastic jaws, and never across both faces. An old one has swollen: the size is an upper bound.", Answer::measure,
             "7.9 mm", kNobodyAsks},
    Question{"cell-size.height", Section::cells, "Height of a cell without marks",
             "Plastic jaws or a depth rule. An old one has swollen: the size is an upper bound.", Answer::measure, "3.6 mm",
             kNobodyAsks},
    Question{"crust.colour", Section::cells, "Colour of a crust", "Glasses on. Loupe on the leaf, its corner and the seam of the cell. None: on with the jobs. Any: gloves on, nothing wiped, the back "
             "laid on, and the watch planned again with its colour.",
             Answer::one_of, "",
             [](const Planner& planner) { return planner.watch.crust.has_value() || !planner.watch.residues.empty(); }, true},
    Question{"crust.place", Section::cells, "Place of the crust", "Where it is thickest, and how far it has crept.",
             Answer::words, "at the minus leaf", kNobodyAsks},
    Question{"residues", Section::cells, "What the crust is, where it is known",
             "By the cell that leaked and by its look. Where it is not known, its colour is enough.", Answer::some_of, "",
             kNobodyAsks},
    Question{"inside", Section::cells, "What stays in the case",
             "Write down what a liquid could reach: film, print, strip, board.", Answer::some_of, "",
             [](const Planner& planner) { return !planner.watch.inside.empty(); }, true},

    Question{
        "crystal", Section::crystal, "Kind of crystal",
        "Loupe: swirls with soft edges are acrylic, scratches with hard edges are glass. Then warmth at the back of a finger: "
        "acrylic is warm, glass is cool. Until it is known, nothing but soap water touches it.",
        Answer::one_of, "", [](const Planner& planner) { return !planner.crystal_material().empty(); }},
    Question{"crystal-signs.scratches", Section::crystal, "Edges of its scratches",
             "Under the loupe, where the kind is not known.", Answer::one_of, "", kNobodyAsks},
    Question{"crystal-signs.feels", Section::crystal, "How it feels", "At the back of a finger, where the kind is not known.",
             Answer::one_of, "", kNobodyAsks},
    Question{"crystal-size.diameter", Section::crystal, "Width of the crystal",
             "Callipers with tape on their jaws, across the rim, in two directions.", Answer::measure, "26.0 mm",
             [](const Planner& planner) {
               return (planner.watch.crystal_size && is_known(planner.watch.crystal_size->diameter)) || !uses_crystal_size(planner);
             }},
    Question{"crystal-size.length", Section::crystal, "Length of the crystal", "Of one that is not round.", Answer::measure,
             "30.0 mm", kNobodyAsks},
    Question{
        "crystal-size.thickness", Section::crystal, "Thickness of the crystal",
        "It stays in its case: take the height of its rim. Only one that lies loose is measured out of it, with tape on the jaws. No sanding before "
        "it is known.", Answer::measure,
        "1.5 mm",
        [](const Planner& planner) {
          return (planner.watch.crystal_size && is_known(planner.watch.crystal_size->thickness)) || !uses_crystal_size(planner);
        }},
    Question{"nail", Section::crystal, "A nail across the deepest scratch",
             "Lightly, with a clean nail, across it and not along.", Answer::one_of, "", kNobodyAsks},
    Question{"scratch", Section::crystal, "Depth of the deepest scratch",
             "Draw a nail across it: it catches, or the scratch is only seen. A depth stands here only where it was measured.",
             Answer::measure, "0.03 mm",
             [](const Planner& planner) {
               return is_known(planner.watch.scratch) || !planner.watch.nail.empty() || !uses_scratch(planner);
             }},

    Question{
        "gasket", Section::gasket, "Kind of the back gasket",
        "Lift it with pegwood and look at its section: round, flat or like an L. Keep it to compare, do not measure the seat "
        "by it.",
        Answer::one_of, "", [](const Planner& planner) { return !planner.series().empty(); }, true},
    Question{"gasket-seat", Section::gasket, "Seat of the gasket",
             "Callipers on the boss that the gasket is drawn over, in the bore in which it lies, or across the flat face on which it "
             "lies, in three directions, within 0.05 mm of each other. Write down which of the three it is.",
             Answer::measure, "28.60 mm", [](const Planner& planner) { return is_known(planner.watch.gasket_seat); }, true},
    Question{"old-gasket.inside", Section::gasket, "Inside of the old gasket",
             "Where the seat cannot be reached. It is set, so that it tells a size to look for and none to order.",
             Answer::measure, "27.9 mm", kNobodyAsks},
    Question{"old-gasket.section", Section::gasket, "Thickness of the old gasket", "Of a round one, where the kind is not known.",
             Answer::measure, "0.7 mm", kNobodyAsks},
    Question{"groove.depth", Section::gasket, "Depth of the groove",
             "Press soft putty into it, close the back, open it, measure the putty.", Answer::measure, "0.55 mm", kNobodyAsks},
    Question{"groove.width", Section::gasket, "Width of the groove", "Of the same putty.", Answer::measure, "0.9 mm",
             kNobodyAsks},

    Question{"on-hand.grades", Section::ready, "Papers that lie ready", "The grades on their backs.", Answer::grades,
             "P800, P1200, P2500", kNobodyAsks},
    Question{"on-hand.liquids", Section::ready, "Liquids that lie ready", "One that would ruin this watch is said.",
             Answer::some_of, "", kNobodyAsks},
    Question{"on-hand.gaskets", Section::ready, "Gaskets that lie ready", "Series and inside of each that comes near the seat.",
             Answer::gaskets, "28 mm", kNobodyAsks},

    Question{"jobs", Section::jobs, "What is to be done", "Ask the owner. The plan below is the usual one for what is known.",
             Answer::jobs, "", [](const Planner& planner) { return !planner.watch.jobs.empty(); }}};

}  // namespace

std::span<const Question> questions() { return kQuestions; }

}  // namespace benchleaf::compose
