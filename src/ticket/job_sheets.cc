// In: the jobs that are done. Out: a sheet each: cautions before their steps, in full the first time on the ticket, and beside
// the steps what to lay out, the doses, and what this watch adds.
#include <algorithm>

#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

namespace {

using Kind = SheetLine::Kind;
using model::Style;
using Step = model::Procedure::Step;

/// Cautions that stood in full on a sheet before.
class Said {
 public:
  void put(const RecordRef& caution, SectionBuilder& section) {
    const bool again = has(said_, caution);
    if (!again) said_.push_back(caution);
    section.add(Kind::caution, {}, caution).again = again;
  }

 private:
  References said_;
};

model::Runs step_runs(const SheetContext& context, const Step& step) {
  compose::Line line = context.line();
  line.say(step.text);
  if (!step.grade.empty()) line.say(" Grade " + step.grade + ".", Style::bold);
  std::vector<std::string> liquids;
  for (const RecordRef& liquid : step.with) {
    const std::string name = context.desk.name(liquid);
    const bool said = step.text.find(name) != std::string::npos;
    if (!said && liquid.is(model::Kind::chemistry)) liquids.push_back(name);
  }
  if (!liquids.empty()) line.say(" With " + compose::listed(liquids) + ".", Style::bold);
  if (!step.see.empty()) line.say(" See: ", Style::bold).say(step.see, Style::italic);
  return line.take();
}

void add_steps(const SheetContext& context, const PlanJob& job, Said& said, SectionBuilder& section) {
  if (!job.bound.before.empty()) {
    compose::Line line = context.line();
    section.add(Kind::words, line.say("Before: ", Style::bold).say(compose::listed(job.bound.before, ". ") + ".").take());
  }
  for (const RecordRef& caution : job.bound.cautions) said.put(caution, section);
  for (const Step& step : job.bound.steps) {
    if (!step.caution.empty())
      said.put(step.caution, section);
    else
      section.add(Kind::step, step_runs(context, step));
  }
  if (!job.bound.stop.empty()) {
    compose::Line line = context.line();
    section.add(Kind::words, line.say("Stop if: ", Style::bold).say(compose::listed(job.bound.stop, ". Or: ") + ".").take());
  }
  if (job.bound.done.empty()) return;
  compose::Line line = context.line();
  section.add(Kind::tick, line.say("Done: ", Style::bold).say(job.bound.done).take());
}

/// What the steps use, a box before each.
void add_lay_out(const SheetContext& context, const PlanJob& job, std::vector<SheetSection>& beside) {
  SectionBuilder section("lay-out-" + job.procedure.id(), "Lay out");
  References things;
  for (const Step& step : job.bound.steps) {
    for (const RecordRef& tool : step.tools) add_once(things, tool);
    for (const RecordRef& liquid : step.with) {
      if (liquid.is(model::Kind::chemistry)) add_once(things, liquid);
    }
  }
  for (const RecordRef& thing : things) section.add(Kind::tick, text_runs(context.desk.name(thing)), thing);
  section.close(beside);
}

void add_doses(const SheetContext& context, const PlanJob& job, std::vector<SheetSection>& beside) {
  SectionBuilder section("doses-" + job.procedure.id(), "How much");
  const auto uses = [&job](const RecordRef& liquid) {
    return std::any_of(job.bound.steps.begin(), job.bound.steps.end(), [&](const Step& step) { return has(step.with, liquid); });
  };
  for (const PlannedDose& dose : context.plan.doses) {
    if (!uses(dose.liquid)) continue;
    compose::Line line = context.line();
    line.say(compose::sentence_case(context.desk.name(dose.liquid)), Style::bold)
        .say(" on " + context.desk.name(dose.residue) + ": ");
    context.say_fact(line, dose.name + ".swabs").say("; ");
    context.say_fact(line, dose.name + ".volume");
    section.add(Kind::words, line.take(), dose.liquid);
  }
  for (const PlanNeed& need : context.plan.needs) {
    const auto* chemistry = context.desk.records.find<model::Chemistry>(need.record);
    if (chemistry == nullptr || !uses(need.record)) continue;
    compose::Line line = context.line();
    line.say(compose::sentence_case(context.desk.name(need.record)) + ": ", Style::bold);
    if (!chemistry->dilute.empty()) section.add(Kind::words, line.say(chemistry->dilute).take(), need.record);
  }
  section.close(beside);
}

/// What this watch adds to the job: readings to take there, its own reset, room to write.
void add_own(const SheetContext& context, const PlanJob& job, std::vector<SheetSection>& beside) {
  SectionBuilder section("own-" + job.procedure.id(), "On this watch");
  for (const model::Look* look : context.looks("by-jobs", job.procedure)) {
    compose::Line line = context.line();
    line.say(context.filled(look->text));
    for (int i = 0; i < look->blanks; ++i) line.say(" ").blank(24);
    section.add(Kind::tick, line.take(), look->caution);
  }
  for (const model::Look* look : context.looks("reading", job.procedure)) {
    compose::Line line = context.line();
    const std::string healthy = context.filled(look->healthy);
    line.say("Write on the front sheet: ", Style::bold).say(context.filled(look->text));
    if (!look->unit.empty()) line.say(", in " + look->unit);
    section.add(Kind::tick, line.say(healthy.empty() ? "." : "; healthy: " + healthy + ".").take());
  }
  section.close(beside);
}

bool guards(const PlanJob& job, const RecordRef& caution) {
  return has(job.bound.cautions, caution) || std::any_of(job.bound.steps.begin(), job.bound.steps.end(),
                                                         [&caution](const Step& step) { return step.caution == caution; });
}

/// Whether a caution of the short form guards something on this ticket: idle ones were taken out of the bound procedures. One
/// that only a later job needs may stand earlier.
bool guards_here(const Plan& plan, const RecordRef& caution) {
  return std::any_of(plan.jobs.begin(), plan.jobs.end(),
                     [&caution](const PlanJob& job) { return job.state == PlanJob::State::done && guards(job, caution); });
}
void add_waste(const SheetContext& context, std::vector<SheetSection>& beside) {
  SectionBuilder section("waste", "What goes where");
  for (const model::Look* look : context.looks("waste")) section.add(Kind::tick, text_runs(context.filled(look->text)));
  for (const PlanNeed& need : context.plan.needs) {
    const auto* chemistry = context.desk.records.find<model::Chemistry>(need.record);
    if (chemistry == nullptr || chemistry->waste.empty()) continue;
    compose::Line line = context.line();
    section.add(
        Kind::words,
        line.say(compose::sentence_case(context.desk.name(need.record)) + ": ", Style::bold).say(chemistry->waste).take());
  }
  section.close(beside);
}

}  // namespace

void add_job_sheets(const SheetContext& context, std::vector<JobSheet>& jobs) {
  Said said;
  int number = 0;
  for (const PlanJob& job : context.plan.jobs) {
    if (job.state != PlanJob::State::done) continue;
    SectionBuilder steps("job-" + std::to_string(++number), job.bound.title);
    add_steps(context, job, said, steps);
    JobSheet sheet{steps.take(), {}, job.procedure, number};
    add_own(context, job, sheet.beside);
    add_doses(context, job, sheet.beside);
    add_lay_out(context, job, sheet.beside);
    jobs.push_back(std::move(sheet));
  }
  if (!jobs.empty()) add_waste(context, jobs.back().beside);
}

JobSheet brief_sheet(const SheetContext& context) {
  Said said;
  References shown;
  SectionBuilder steps("job-1", "Steps", "tick as you go; each hazard in full in chapter 1 of the handbook");
  for (const PlanJob& job : context.plan.jobs) {
    const auto* rule = context.desk.records.find<model::Job>(job.job);
    if (job.state != PlanJob::State::done || rule == nullptr) continue;
    for (const auto& brief : rule->brief) {
      if (brief.caution.empty()) {
        steps.add(Kind::step, text_runs(brief.text));
      } else if (!has(shown, brief.caution) && guards_here(context.plan, brief.caution)) {
        shown.push_back(brief.caution);
        steps.add(Kind::caution, {}, brief.caution).again = true;
      }
    }
  }
  return {steps.take(), {}, {}, 0};
}

}  // namespace benchleaf::ticket
