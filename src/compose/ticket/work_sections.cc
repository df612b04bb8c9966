// In: the judged jobs. Out: a section each, cautions before their steps, the reset behind the cell; then the list before closing,
// what may be said of water, what goes where, the owner's card.
#include <algorithm>
#include <set>

#include "compose/ticket/planner.h"

namespace benchleaf::compose {

namespace {

using Step = model::Procedure::Step;

constexpr const char* kWake = "procedure/wake-a-blank-display";

/// Where the reader goes when the new cell alone does not wake the watch.
void add_after_reset(Planner& planner, SectionMaker& section) {
  const auto& records = planner.desk.records;
  const bool hands = planner.display() == "hands";
  Line line = planner.line();
  line.say(hands ? "No hand moves: " : "Blank all the same: ", model::Style::bold);
  if (const int wake = number_of_job(planner, kWake); wake > 0)
    return section.words(line.say("on with " + std::to_string(wake) + ", " + planner.desk.name(kWake) + "."));
  const auto symptom = records.symptoms.find(hands ? "hands-stopped" : "blank-display");
  if (symptom == records.symptoms.end()) return;
  section.words(line.say(
      "look which way up the cell lies, and whether the cell strap lies on the can. Still nothing: the cell out, and the "
      "watch planned again with \"" +
      symptom->second.title + "\"."));
}

void add_reset(Planner& planner, SectionMaker& section) {
  const model::Module* module = planner.module();
  Line line = planner.line();
  line.say("Reset after the cell. ", model::Style::bold);
  if (module != nullptr && !module->reset.empty() && module->reset != "none") {
    section.tick(line.say(module->reset));
  } else {
    section.tick(line.say(
        "None is on record. Look for a pad marked AC, R or reset and join it to plus for two seconds with the bent wire; "
        "where there is none, the cell comes out for ten minutes and goes in again."));
  }
  add_after_reset(planner, section);
}

bool changes_cell(const PlanJob& job) {
  return job.procedure == "procedure/change-the-cell" || job.procedure == "procedure/replace-a-mercury-cell";
}

model::Runs step_runs(const Planner& planner, const Step& step) {
  Line line = planner.line();
  line.say(step.text);
  if (!step.grade.empty()) line.say(" Grade " + step.grade + ".", model::Style::bold);
  std::vector<std::string> liquids;
  for (const std::string& liquid : step.with) {
    const std::string name = planner.desk.name(liquid);
    const bool said = step.text.find(name) != std::string::npos;
    if (!said && liquid.rfind("chemistry/", 0) == 0) liquids.push_back(name);
  }
  if (!liquids.empty()) line.say(" With " + listed(liquids) + ".", model::Style::bold);
  if (!step.see.empty()) line.say(" Then: " + step.see, model::Style::italic);
  return line.take();
}

/// Room for the size of a cell without marks.
void add_cell_room(Planner& planner, SectionMaker& section) {
  Line line = planner.line();
  line.say("Cell: width ")
      .blank(14)
      .say(" mm, height ")
      .blank(14)
      .say(" mm. Well: across ")
      .blank(14)
      .say(" mm, deep ")
      .blank(14);
  section.tick(line.say(" mm. With these plan the watch again: the sheet then names the cell."));
}

/// Room for what a gasket is picked by; each of three readings has its own.
void add_seat_room(Planner& planner, SectionMaker& section) {
  Line line = planner.line();
  line.say("Boss, bore or face: ")
      .blank(14)
      .say(" of ")
      .blank(14)
      .say(" ")
      .blank(14)
      .say(" ")
      .blank(14)
      .say(" mm. Groove: deep ");
  section.tick(line.blank(14).say(" mm, wide ").blank(14).say(" mm. Section and inside: ").blank(24));
}

/// A young leak is lifted by the same steps.
void add_young_way(Planner& planner, SectionMaker& section) {
  const std::string young = young_leak(planner);
  if (young.empty()) return;
  Line line = planner.line();
  section.words(line.say("Of an " + young + ", by its receipt: ", model::Style::bold)
                    .say("the same steps, but no label mercury, and the closed bag goes to the spent cells."));
}

void add_job(Planner& planner, const PlanJob& job, int number) {
  SectionMaker section(planner, "job-" + std::to_string(number), std::to_string(number) + "  " + job.bound.title);
  if (!job.bound.before.empty()) {
    Line line = planner.line();
    section.words(line.say("Before: ", model::Style::bold).say(listed(job.bound.before, "; ") + "."));
  }
  if (job.procedure == "procedure/lift-an-old-leak") add_young_way(planner, section);
  for (const std::string& caution : job.bound.cautions) section.caution(caution);
  bool reset = !changes_cell(job);
  for (const Step& step : job.bound.steps) {
    const bool resets = std::find(step.tools.begin(), step.tools.end(), "tool/reset-wire") != step.tools.end();
    if (!step.caution.empty()) {
      section.caution(step.caution);
    } else if (resets && !reset) {
      add_reset(planner, section);  // this module's own, in place of the general one
      reset = true;
    } else {
      section.step(step_runs(planner, step));
    }
  }
  if (!reset) add_reset(planner, section);
  if (job.procedure == "procedure/measure-consumption") add_measured(planner, section);
  if (job.procedure == "procedure/name-a-worn-cell") add_cell_room(planner, section);
  if (job.procedure == "procedure/measure-a-gasket") add_seat_room(planner, section);
  if (!job.bound.stop.empty()) {
    Line line = planner.line();
    section.words(line.say("Stop if: ", model::Style::bold).say(listed(job.bound.stop, ". Or: ") + "."));
  }
  if (!job.bound.done.empty()) {
    Line line = planner.line();
    section.tick(line.say("Done: ", model::Style::bold).say(job.bound.done));
  }
  section.close();
}

void add_closing(Planner& planner) {
  const model::Module* module = planner.module();
  SectionMaker section(planner, "closing", "Before it is closed, and after");
  const bool hands = planner.display() == "hands";
  section.tick(hands ? "Every hand moves and touches nothing; the date changes at midnight."
                     : "Every segment was seen: all at the reset, or each figure from 0 to 9.");
  section.tick("Each button ten times: ten presses, ten returns.");
  if (module == nullptr) section.tick("The lamp, if it has one, last of all: the display holds.");
  if (module != nullptr && module->lamp != "none") section.tick("The lamp last, with the cell that stays in: the figures hold.");
  if (number_of_job(planner, "procedure/measure-consumption") > 0)
    section.tick(module != nullptr && !module->healthy.empty() ? "Current and voltage stand on this sheet, and are healthy."
                                                               : "Current and voltage stand on this sheet.");
  else
    add_measured(planner, section);
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
  section.words(
      "Say: the gasket of the back was renewed and the watch was tried for fog. Say no depth, no pressure and no \"resistant\".");
  section.close();
}

/// Whether something that was found comes out of a cell.
bool has_leaked(const Planner& planner) {
  const std::vector<std::string> residues = planner.residues();
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
  if (has_leaked(planner))
    section.tick(
        "Swabs and the leaking cell: each in a sealed bag, marked. From a leak that is not known to be younger than 2016, to the "
        "point that takes hazardous waste.");
  for (const PlanNeed& need : planner.plan.needs) {
    const auto chemistry = planner.desk.records.chemistries.find(Planner::id_of(need.record));
    if (need.record.rfind("chemistry/", 0) != 0 || chemistry == planner.desk.records.chemistries.end()) continue;
    if (chemistry->second.waste.empty()) continue;
    Line line = planner.line();
    section.words(line.say(sentence_case(need.words) + ": ", model::Style::bold).say(chemistry->second.waste));
  }
  section.tick("Old gasket and old crystal: in a bag with the number of the job, to the owner.");
  section.close();
}

void add_card(Planner& planner) {
  SectionMaker section(planner, "card", "Owner's card");
  Line head = planner.line();
  section.words(head.say(planner.watch.title).say(". Date ").blank(26));
  const bool open = planner.cells().size() > 1;  // the well decides
  for (const PlanNeed& need : planner.plan.needs) {
    const model::Cell* cell = planner.desk.cell(need.record);
    if (cell == nullptr || open) continue;
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

void Planner::add_job_sections() {
  int number = 0;
  for (const PlanJob& job : plan.jobs) {
    if (job.held.empty()) add_job(*this, job, ++number);
  }
}

void Planner::add_closing_sections() {
  add_closing(*this);
  add_water(*this);
  add_disposal(*this);
  add_card(*this);
}

}  // namespace benchleaf::compose
