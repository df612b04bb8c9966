// In: what the plan needs, and what the calculators said. Out: the sections that lay things ready: parts, liquids, ladder,
// gasket.
#include <string>
#include <utility>
#include <vector>

#include "ticket/planner.h"

namespace benchleaf::compose {

namespace {

/// A part of its own line: how many, where it lies, what does as well.
void add_part(Planner& planner, const PlanNeed& need, SectionMaker& section) {
  Line line = planner.line();
  line.say(std::to_string(need.count) + " \u00D7 " + need.words, model::Style::bold);
  if (!need.note.empty()) line.say("; " + need.note);
  const std::string place = need.place.empty() ? "" : ": " + need.place;
  if (planner.drawer != nullptr && need.in_drawer >= need.count) line.say(", in the drawer" + place);
  if (planner.drawer != nullptr && need.in_drawer > 0 && need.in_drawer < need.count)
    line.say(", only " + std::to_string(need.in_drawer) + " in the drawer" + place + "; order the rest");
  if (planner.drawer != nullptr && need.in_drawer == 0) line.say(", to order");
  for (const std::string& instead : need.instead) line.say("; or " + instead);
  section.tick(line.say("."));
}

void add_list(Planner& planner, const char* head, const std::vector<std::string>& words, SectionMaker& section) {
  if (words.empty()) return;
  Line line = planner.line();
  section.tick(line.say(head, model::Style::bold).say(listed(words, "; ") + "."));
}

/// What is used up stands by itself; papers, liquids and tools in a line each, and apart what the drawer lacks of them.
void add_parts(Planner& planner) {
  SectionMaker section(planner, "parts", planner.drawer == nullptr ? "Get ready" : "From the drawer, and to order");
  std::vector<std::string> tools;
  std::vector<std::string> shelf;
  std::vector<std::string> to_order;
  for (const PlanNeed& need : planner.plan.needs) {
    const bool lacks = planner.drawer != nullptr && need.in_drawer == 0;
    if (need.used_up)
      add_part(planner, need, section);
    else if (model::RecordRef(need.record).is(model::Kind::tool))
      add_once(tools, need.words);
    else
      add_once(lacks ? to_order : shelf, need.place.empty() ? need.words : need.words + " (" + need.place + ")");
  }
  add_list(planner, planner.drawer == nullptr ? "Papers and liquids: " : "In the drawer: ", shelf, section);
  add_list(planner, "To order, or from the shelf: ", to_order, section);
  add_list(planner, "Tools: ", tools, section);
  section.close();
}

void add_liquids(Planner& planner) {
  SectionMaker section(planner, "liquids", "Doses and dilutions");
  for (const PlannedDose& dose : planner.doses) {
    Line line = planner.line();
    line.say(sentence_case(planner.desk.name(dose.liquid)), model::Style::bold);
    line.say(" for 10\u2009mg of " + planner.desk.name(dose.residue) + ", a heap of about 2\u2009mm each way: ");
    planner.say_fact(line, dose.name + ".swabs").say("; ");
    planner.say_fact(line, dose.name + ".volume");
    if (planner.fact(dose.name + ".gas") != nullptr) planner.say_fact(line.say("; gas "), dose.name + ".gas");
    section.words(line.say(". Swab by swab until it stops fizzing, in the open, then water three times."));
  }
  for (const PlanNeed& need : planner.plan.needs) {
    const auto chemistry = planner.desk.records.chemistries.find(Planner::id_of(need.record));
    if (!model::RecordRef(need.record).is(model::Kind::chemistry) || chemistry == planner.desk.records.chemistries.end())
      continue;
    if (chemistry->second.dilute.empty()) continue;
    Line line = planner.line();
    section.words(line.say(sentence_case(need.words) + ": ", model::Style::bold).say(chemistry->second.dilute));
  }
  section.close();
}

void add_ladder(Planner& planner) {
  if (planner.rungs.empty()) return;
  SectionMaker section(planner, "ladder", "Sanding ladder");
  Line rungs = planner.line();
  planner.say_fact(rungs, "scratch-ladder.ladder");
  section.words(rungs.say(". Wet, each grade turned by 45 degrees to the one before, no pressing."));
  Line taken = planner.line();
  planner.say_fact(taken.say("The grades take "), "scratch-ladder.ladder-removal");
  planner.say_fact(taken.say(", with the scratch "), "scratch-ladder.removal");
  planner.say_fact(taken.say("; left of the crystal: "), "scratch-ladder.left");
  section.words(taken.say("."));
  if (planner.fact("scratch-ladder.still-holds") != nullptr) {
    Line holds = planner.line();
    planner.say_fact(holds.say("What is left, under a thumb: "), "scratch-ladder.still-holds");
    section.words(holds.say("."));
  }
  section.close();
}

/// An old gasket tells a size to look for, not one to order.
void add_by_old_gasket(Planner& planner) {
  if (planner.fact("gasket-fit.size") == nullptr) return;
  SectionMaker section(planner, "gasket", "Gasket of the back");
  Line size = planner.line();
  size.say(sentence_case(planner.desk.name(planner.series())) + ", by the inside of the old one: ");
  section.words(planner.say_fact(size, "gasket-fit.size").say(". The old one is set: its inside is no measure of the seat."));
  section.close();
}

void add_gasket(Planner& planner) {
  if (planner.gasket_sizes.empty()) return add_by_old_gasket(planner);
  SectionMaker section(planner, "gasket", "Gasket of the back");
  Line size = planner.line();
  size.say(sentence_case(planner.desk.name(planner.series())) + ": inside ");
  planner.say_fact(size, "gasket-fit.size");
  if (const model::Fact* seat = planner.fact("gasket-seat")) size.say(" on a seat of ").fact(*seat);
  for (const auto& [output, word] :
       {std::pair{"stretch", "; stretch "}, {"interference", "; interference "}, {"play", "; play "}}) {
    const std::string name = std::string("gasket-fit.") + output;
    if (planner.fact(name) != nullptr) planner.say_fact(size.say(word), name);
  }
  section.words(size.say("."));
  Line measured = planner.line();
  section.tick(
      measured.say("Measure the gasket that came out of the bag: inside ").blank(16).say(" mm, section ").blank(16).say(" mm."));
  section.close();
}

}  // namespace

void Planner::add_ready_sections() {
  add_parts(*this);
  add_liquids(*this);
  add_ladder(*this);
  add_gasket(*this);
}

}  // namespace benchleaf::compose
