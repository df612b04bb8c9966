// In: the judged jobs. Out: a section each, cautions before their steps, the reset behind the cell, room for what is measured.
#include <algorithm>

#include "ticket/planner.h"

namespace benchleaf::compose {

namespace {

using Step = model::Procedure::Step;

constexpr const char* kWake = "procedure/wake-a-blank-display";

/// A display that lights itself is blank until its button is held.
bool lights_itself(const Planner& planner) { return planner.display() == "led"; }

/// Where the reader goes when the new cell alone does not wake the watch.
void add_after_reset(Planner& planner, SectionMaker& section) {
  const auto& records = planner.desk.records;
  const bool hands = planner.display() == "hands";
  Line line = planner.line();
  line.say(hands                    ? "No hand moves: "
           : lights_itself(planner) ? "No figures while the button is held: "
                                    : "Blank all the same: ",
           model::Style::bold);
  if (const int wake = number_of_job(planner, kWake); wake > 0)
    return section.words(line.say("on with " + std::to_string(wake) + ", " + planner.desk.name(kWake) + "."));
  const auto symptom = records.symptoms.find(hands ? "hands-stopped" : "blank-display");
  if (symptom == records.symptoms.end()) return;
  const bool pair = planner.module() != nullptr && planner.module()->cell_count > 1;
  line.say(pair ? "look which way up each cell lies, and whether the cell strap lies on both and not on the frame."
                : "look which way up the cell lies, and whether the cell strap lies on the can.");
  section.words(line.say(" Still nothing: every cell out, and the watch planned again with \"" + symptom->second.title + "\"."));
}

void add_reset(Planner& planner, SectionMaker& section) {
  const model::Module* module = planner.module();
  Line line = planner.line();
  line.say("Reset after the cell. ", model::Style::bold);
  const bool on_record = module != nullptr && !module->reset.empty() && module->reset != "none";
  const bool series = module != nullptr && module->wiring == model::Wiring::series;
  if (on_record)
    line.say(module->reset);
  else
    line.say(std::string(
                 "None is on record. Look for a pad marked AC, R or reset and join it for two seconds with the bent wire to ") +
             (series
                  ? "the wall of the can that looks down, which is plus, and not to the cell strap; where there is no pad, both "
                    "cells come out for ten minutes and go in again as they lay."
                  : "plus; where there is none, the cell comes out for ten minutes and goes in again."));
  section.tick(line);
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
  for (const model::RecordRef& liquid : step.with) {
    const std::string name = planner.desk.name(liquid);
    const bool said = step.text.find(name) != std::string::npos;
    if (!said && liquid.is(model::Kind::chemistry)) liquids.push_back(name);
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
  line.say(" mm. System ").blank(18).say(", high drain (lamp, alarm, lit display) yes or no ").blank(10);
  line.say(". With these plan the watch again: the sheet then names the cell.");
  if (waits_for_cell(planner))
    line.say(" Stop here: nothing is fitted before that, and the back is laid on with its old gasket, not pressed home.",
             model::Style::bold);
  section.tick(line);
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

/// Where nobody knows yet how the back is held, the work ends before it.
void add_stop_at_back(Planner& planner, SectionMaker& section) {
  Line line = planner.line();
  line.say("Stop here. ", model::Style::bold);
  section.words(planner.watch.back == "none"
                    ? line.say("This case has no back: it opens over its crystal, which a watchmaker lifts. No blade goes to it.")
                    : line.say("No blade, wrench or screwdriver goes to this back by this sheet. Write down how the back is held "
                               "and plan the watch again: the new sheet opens it, with its cautions."));
}

/// Whether a step cleans what the gasket lies in, so that the groove can be measured after it.
bool cleans_seat(const PlanJob& job, const Step& step) {
  return job.procedure == "procedure/renew-back-gasket" && !step.with.empty() && !step.on.empty() &&
         !holds(step.on, "part/back-gasket");
}

/// Room and lines that this watch adds behind the steps of a job.
void add_own_lines(Planner& planner, const PlanJob& job, SectionMaker& section) {
  const std::string& id = job.procedure;
  if (id == "procedure/measure-consumption") add_measured(planner, section);
  if (id == "procedure/check-before-closing" && number_of_job(planner, "procedure/measure-consumption") == 0)
    add_measured(planner, section);
  if (id == "procedure/name-a-worn-cell") add_cell_room(planner, section);
  if (id == "procedure/measure-a-gasket") add_seat_room(planner, section);
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
      if (cleans_seat(job, step)) add_groove(planner, section);
    }
  }
  if (!reset) add_reset(planner, section);
  add_own_lines(planner, job, section);
  if (!job.bound.stop.empty()) {
    Line line = planner.line();
    section.words(line.say("Stop if: ", model::Style::bold).say(listed(job.bound.stop, ". Or: ") + "."));
  }
  if (!job.bound.done.empty()) {
    Line line = planner.line();
    section.tick(line.say("Done: ", model::Style::bold).say(job.bound.done));
  }
  if (job.procedure == "procedure/look-before-you-touch" && stays_closed(planner)) add_stop_at_back(planner, section);
  section.close();
}

}  // namespace

void Planner::add_job_sections() {
  int number = 0;
  bool asked = std::none_of(plan.jobs.begin(), plan.jobs.end(), opens_back);
  if (asked && !stays_closed(*this)) add_check_list(*this, true);
  for (const PlanJob& job : plan.jobs) {
    if (!job.held.empty()) continue;
    add_job(*this, job, ++number);
    if (!asked && opens_back(job)) {
      add_check_list(*this, true);
      asked = true;
    }
  }
  if (stays_closed(*this)) add_check_list(*this, true);
}

}  // namespace benchleaf::compose
