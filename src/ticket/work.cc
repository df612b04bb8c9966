// In: the jobs of a plan, its symptoms. Out: the list of jobs in their order, what waits and for what, the causes in their order.
#include <algorithm>
#include <cctype>

#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

namespace {

using Kind = SheetLine::Kind;
using model::Style;

const model::Symptom::Cause* cause_of(const SheetContext& context, const PlanCause& cause) {
  const auto* symptom = context.desk.records.find<model::Symptom>(cause.symptom);
  return symptom == nullptr || cause.cause >= symptom->causes.size() ? nullptr : &symptom->causes[cause.cause];
}

std::string in_sentence(std::string words) {
  if (words.size() > 1 && words[1] >= 'a' && words[1] <= 'z')
    words[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(words[0])));
  return words;
}

/// One line: the cause that asks for it, else why such a job is done at all.
std::string reason_of(const SheetContext& context, const PlanJob& job) {
  if (!job.causes.empty()) {
    const auto* cause = cause_of(context, job.causes.front());
    if (cause != nullptr) return context.desk.name(job.causes.front().symptom) + ": " + in_sentence(cause->cause);
  }
  const auto* rule = context.desk.records.find<model::Job>(job.job);
  return rule != nullptr ? rule->reason : job.bound.purpose;
}

model::Runs page_of_job(const RecordRef& procedure) { return {model::page_run("sheet/" + procedure.id())}; }

/// What is somebody else's on any watch.
void add_what_waits(const SheetContext& context, SectionBuilder& section) {
  for (const model::Look* look : context.looks("waits")) {
    if (look->head.empty())
      section.words(context.filled(look->text), look->caution);
    else
      section.row(Kind::words, {text_runs(look->head, Style::bold), text_runs(context.filled(look->text))}, look->caution);
  }
}

/// Whether only the test of a cause says that a job is done: nobody asked for it, and it is not usual on such a watch.
bool is_by_test(const SheetContext& context, const PlanJob& job) {
  const auto* rule = context.desk.records.find<model::Job>(job.job);
  return !job.asked && !job.causes.empty() && rule != nullptr && !any_holds(context.context, context.marks, rule->usual, false);
}

/// Jobs of which a test decides, in one line, each in its place by its number; the tests stand behind the front sheet.
void add_by_test(const SheetContext& context, SectionBuilder& section) {
  model::Runs runs;
  for (const PlanJob& job : context.plan.jobs) {
    if (job.state != PlanJob::State::done || !is_by_test(context, job)) continue;
    compose::Line one = context.line();
    one.say(runs.empty() ? "Each in its place, only where the test of its cause says so: " : "\u2003").tick();
    one.say("\u00A0" + std::to_string(context.plan.number_of(job.procedure)) + "\u00A0", Style::bold);
    for (model::Run& run : one.take()) runs.push_back(std::move(run));
    for (model::Run& run : page_of_job(job.procedure)) runs.push_back(std::move(run));
  }
  if (!runs.empty()) section.add(Kind::words, std::move(runs));
}

void add_jobs_done(const SheetContext& context, std::vector<SheetSection>& front) {
  SectionBuilder section("work", "Jobs, in this order", "the steps are on the sheets behind");
  for (const PlanJob& job : context.plan.jobs) {
    if (job.state != PlanJob::State::done || is_by_test(context, job)) continue;
    const int number = context.plan.number_of(job.procedure);
    compose::Line head = context.line();
    head.tick().say(
        "\u00A0" + std::string(number < 10 ? "\u2007" : "") + std::to_string(number) + "\u2002" + job_title(context.desk, job),
        Style::bold);
    section.row(Kind::tick, {head.take(), page_of_job(job.procedure), text_runs(reason_of(context, job))}, job.procedure);
  }
  add_by_test(context, section);
  const auto waits = [](const PlanJob& job) { return job.state != PlanJob::State::done; };
  if (std::none_of(context.plan.jobs.begin(), context.plan.jobs.end(), waits)) add_what_waits(context, section);
  section.close(front);
}

/// Those that wait for the same stand in one row.
void add_waiting(const SheetContext& context, std::vector<SheetSection>& front) {
  SectionBuilder section("waits", "Jobs not done now", "each says why");
  std::vector<std::pair<std::string, std::vector<const PlanJob*>>> groups;
  for (const PlanJob& job : context.plan.jobs) {
    if (job.state == PlanJob::State::done) continue;
    const std::string why = why_waits(context.desk, job);
    const auto there = std::find_if(groups.begin(), groups.end(), [&why](const auto& group) { return group.first == why; });
    if (there == groups.end())
      groups.push_back({why, {&job}});
    else
      there->second.push_back(&job);
  }
  for (const auto& [why, jobs] : groups) {
    std::vector<std::string> titles;
    for (const PlanJob* job : jobs) titles.push_back(job_title(context.desk, *job));
    section.row(Kind::tick, {text_runs(compose::listed(titles, "; "), Style::bold), text_runs(why)}, jobs.front()->procedure);
    const auto* hold = context.desk.records.find<model::Hold>(jobs.front()->hold);
    for (std::size_t i = 0; hold != nullptr && i < hold->cautions.size(); ++i)
      section.add(Kind::caution, {}, hold->cautions[i]).again = true;
  }
  if (groups.empty()) return;
  add_what_waits(context, section);
  section.close(front);
}

/// `Job 4`, `The job waits`, or the cure where no procedure does it.
std::string answer_of(const SheetContext& context, const model::Symptom::Cause& cause) {
  if (cause.procedure.empty()) return cause.stop.empty() ? cause.cure : cause.stop;
  const int number = context.plan.number_of(cause.procedure);
  if (number > 0) return cause.cure + " Job " + std::to_string(number) + ".";
  const PlanJob* job = context.plan.job(cause.procedure);
  const bool waits = job == nullptr || job->state == PlanJob::State::held;
  return cause.cure + (waits ? " The job waits." : " No job on this watch; the front sheet says why.");
}

/// The causes of what was ticked, the cheapest test first.
void add_causes(const SheetContext& context, std::vector<SheetSection>& front) {
  for (const RecordRef& ticked : context.watch.symptoms) {
    const auto* symptom = context.desk.records.find<model::Symptom>(ticked);
    if (symptom == nullptr) continue;
    SectionBuilder section("causes-" + symptom->id, symptom->title, "try in this order");
    for (const auto& cause : symptom->causes) {
      compose::Line head = context.line();
      section.row(Kind::tick,
                  {head.tick().say("\u00A0" + cause.cause, Style::bold).take(), text_runs(cause.test),
                   text_runs(answer_of(context, cause))},
                  cause.procedure);
    }
    section.close(front);
  }
}

}  // namespace

void add_work(const SheetContext& context, std::vector<SheetSection>& front) {
  if (!context.plan.one_page) {
    add_jobs_done(context, front);
    add_waiting(context, front);
    add_causes(context, front);
  }
}

}  // namespace benchleaf::ticket
