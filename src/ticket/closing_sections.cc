// In: the plan with its jobs. Out: the sections behind them: the list after closing, what may be said of water, what goes where,
// the owner's card.
#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include "ticket/planner.h"

namespace benchleaf::compose {

namespace {

/// What is looked at with the back off, where no job of its own has it.
void add_last_looks(Planner& planner, SectionMaker& section) {
  const model::Module* module = planner.module();
  const std::string lamp = module == nullptr ? std::string() : word_of(module->lamp);
  const bool hands = planner.display() == "hands";
  section.tick(hands ? "Every hand moves and touches nothing; the date changes at midnight."
                     : "Every segment was seen: all at the reset, or each figure from 0 to 9.");
  section.tick("Each button ten times: ten presses, ten returns.");
  if (lamp == "display-itself")
    section.tick("Its button held ten times: the figures evenly bright, none fades.");
  else if (module == nullptr)
    section.tick("The lamp, if it has one, last of all: the display holds.");
  else if (lamp != "none")
    section.tick("The lamp last, with the cell that stays in: the figures hold.");
  if (number_of_job(planner, "procedure/measure-consumption") > 0)
    section.tick(module != nullptr && !module->healthy.empty() ? "Current and voltage stand on this sheet, and are healthy."
                                                               : "Current and voltage stand on this sheet.");
  else
    add_measured(planner, section);
}

void add_closing(Planner& planner) {
  const bool looked = number_of_job(planner, "procedure/check-before-closing") > 0;
  SectionMaker section(planner, "closing", looked ? "After it is closed" : "Before it is closed, and after");
  if (!looked) add_last_looks(planner, section);
  Line rate = planner.line();
  section.tick(
      rate.say("Rate: set at ").blank(22).say(", after a day ").blank(14).say(" s. Half a second a day and less is good."));
  section.tick(
      number_of_job(planner, "procedure/check-for-fog") > 0
          ? "Fog: clear inside, twice running, as its own job has it."
          : "Fog: on a plate of 40 to 45\u2009\u00B0C until it is warm, one drop of cool water on the crystal for a minute, "
            "wiped off; clear inside, twice running.");
  section.close();
}

void add_water(Planner& planner) {
  SectionMaker section(planner, "water", "What may be said of water");
  section.caution("caution/not-water-resistant");
  std::vector<std::string> done;
  if (number_of_job(planner, "procedure/renew-back-gasket") > 0) done.emplace_back("the gasket of the back was renewed");
  if (number_of_job(planner, "procedure/check-for-fog") > 0) done.emplace_back("the watch was tried for fog");
  const std::string may_say = done.empty() ? std::string() : "Say: " + listed(done, " and ") + ". ";
  section.words(may_say + "Say no depth, no pressure and no \"resistant\".");
  section.close();
}

/// Whether something that was found comes out of a cell.
bool has_leaked(const Planner& planner) {
  const model::References residues = planner.residues();
  return std::any_of(residues.begin(), residues.end(), [&](const std::string& residue) {
    const auto found = planner.desk.records.residues.find(Planner::id_of(residue));
    return found != planner.desk.records.residues.end() && !found->second.left_by.empty();
  });
}

void add_disposal(Planner& planner) {
  SectionMaker section(planner, "disposal", "What goes where");
  std::set<std::string> systems;
  for (const std::string& cell : planner.watch.cells_found) {
    if (planner.desk.cell(cell) != nullptr) systems.insert(planner.desk.cell(cell)->system);
  }
  section.tick(
      "Old cells that have not leaked: both faces taped at once, into the box for spent cells, to a collection point. Local "
      "rules go first.");
  if (systems.count("lithium-manganese") > 0) section.tick("Lithium cells apart from the rest.");
  if (has_leaked(planner)) {
    const std::string young = young_leak(planner);
    section.tick("Swabs and the leaking cell: each in a sealed bag, marked, to the point that takes hazardous waste." +
                 (young.empty() ? young : " An " + young + " may go to the spent cells, in its bag."));
  }
  for (const PlanNeed& need : planner.plan.needs) {
    const auto chemistry = planner.desk.records.chemistries.find(Planner::id_of(need.record));
    if (!model::RecordRef(need.record).is(model::Kind::chemistry) || chemistry == planner.desk.records.chemistries.end())
      continue;
    if (chemistry->second.waste.empty()) continue;
    Line line = planner.line();
    section.words(line.say(sentence_case(need.words) + ": ", model::Style::bold).say(chemistry->second.waste));
  }
  section.tick(waits_for_cell(planner) ? "The old gasket stays under the back until the next sheet renews it."
                                       : "Old gasket and old crystal: in a bag with the number of the job, to the owner.");
  section.close();
}

void add_card(Planner& planner) {
  SectionMaker section(planner, "card", "Owner's card");
  Line head = planner.line();
  section.words(head.say(planner.watch.title).say(". Date ").blank(26));
  const bool open = planner.cells().size() > 1;  // the well decides
  for (const PlanNeed& need : planner.plan.needs) {
    if (planner.desk.cell(need.record) == nullptr || need.for_test || open) continue;
    Line line = planner.line();
    section.tick(line.say("Cell fitted: ", model::Style::bold).say(std::to_string(need.count) + " \u00D7 " + need.words + "."));
  }
  const auto is_cell = [&planner](const PlanNeed& need) { return planner.desk.cell(need.record) != nullptr; };
  if (open || std::none_of(planner.plan.needs.begin(), planner.plan.needs.end(), is_cell)) {
    Line line = planner.line();
    section.tick(line.say("Cell fitted: ", model::Style::bold).blank(24).say(" system ").blank(20));
  }
  Line life = planner.line();
  life.say("Change it after: ", model::Style::bold);
  if (planner.fact("cell-life.life") != nullptr)
    section.tick(planner.say_fact(life, "cell-life.life").say(", or when it stops; a spent cell leaks. Month ").blank(18));
  else
    section.tick(life.say("by the current that was measured, at the latest in two years. Month ").blank(18));
  Line replaced = planner.line();
  replaced.say("Replaced: ", model::Style::bold);
  for (const PlanNeed& need : planner.plan.needs) {
    if (need.used_up && planner.desk.cell(need.record) == nullptr) replaced.say(need.words + "; ");
  }
  section.tick(replaced.blank(34));
  Line left = planner.line();
  section.tick(left.say("Left as it was: ", model::Style::bold).blank(40));
  Line water = planner.line();
  section.words(water.say("Not water resistant.", model::Style::bold).say(" Keep it away from water, whatever its back says."));
  section.close();
}

}  // namespace

void Planner::add_closing_sections() {
  const bool ends_open = stays_closed(*this) || waits_for_cell(*this);  // the next sheet goes on
  if (!ends_open) add_closing(*this);
  add_water(*this);
  if (!stays_closed(*this)) add_disposal(*this);
  if (!ends_open) add_card(*this);
}

}  // namespace benchleaf::compose
