// In: what is known of a watch, the jobs, holds and symptoms on record. Out: its jobs in the order of the bench, each done here,
// held with its reason, or not for this watch.
#include "ticket/jobs.h"

#include <algorithm>

#include "ticket/bind_steps.h"

namespace benchleaf::ticket {

namespace {

using State = PlanJob::State;

class JobList {
 public:
  JobList(const Context& context, Marks& marks, Plan& plan) : context_(context), marks_(marks), plan_(plan) {}

  void run() {
    add_named();
    if (context_.watch.jobs.empty()) add_usual();
    add_causes();
    add_bars();
    mark_roles();
    judge();
    order();
  }

 private:
  /// The job of a procedure, made where it is not in the list; nullptr where the handbook lacks it.
  PlanJob* take(const RecordRef& procedure, const std::vector<model::Watch::Filling>& fill = {}) {
    const auto there = std::find_if(plan_.jobs.begin(), plan_.jobs.end(),
                                    [&procedure](const PlanJob& job) { return job.procedure == procedure; });
    if (there != plan_.jobs.end()) return &*there;
    const auto* found = context_.desk.records.find<model::Procedure>(procedure);
    if (found == nullptr) return nullptr;
    PlanJob job;
    job.procedure = procedure;
    job.bound = bind_steps(context_, *found, fill, plan_.rungs);
    if (const model::Job* rule = job_of(context_.desk.records, procedure)) {
      job.job = rule->reference();
      const auto& all = stages();
      job.stage = static_cast<std::size_t>(std::find(all.begin(), all.end(), rule->stage) - all.begin());
    }
    plan_.jobs.push_back(std::move(job));
    return &plan_.jobs.back();
  }

  void add_named() {
    for (const auto& named : context_.watch.jobs) {
      if (PlanJob* job = take(named.procedure, named.fill)) job->asked = true;
    }
  }

  void add_usual() {
    for (const auto& [id, rule] : context_.desk.records.jobs) {
      if (!rule.usual.empty() && any_holds(context_, marks_, rule.usual, false)) take(rule.procedure);
    }
  }

  /// Symptoms lead: each cause's procedure is planned, or named with the reason why not.
  void add_causes() {
    for (const RecordRef& ticked : context_.watch.symptoms) {
      const auto* symptom = context_.desk.records.find<model::Symptom>(ticked);
      if (symptom == nullptr) continue;
      for (std::size_t i = 0; i < symptom->causes.size(); ++i) {
        const auto& cause = symptom->causes[i];
        PlanJob* job = cause.procedure.empty() ? nullptr : take(cause.procedure);
        if (job == nullptr)
          plan_.open_causes.push_back({{ticked, i}, !cause.stop.empty()});
        else
          job->causes.push_back({ticked, i});
      }
    }
  }

  /// Bars that come out for a job go in again.
  void add_bars() {
    const bool out = std::any_of(plan_.jobs.begin(), plan_.jobs.end(), [this](const PlanJob& job) {
      const auto& steps = job.bound.steps;
      return std::any_of(steps.begin(), steps.end(), [this](const auto& step) {
        return std::any_of(step.on.begin(), step.on.end(),
                           [this](const RecordRef& part) { return context_.has_role(part, "spring-bar"); });
      });
    });
    if (!out) return;
    set_mark(marks_, Mark::bars_out);
    if (context_.watch.jobs.empty()) add_usual();
  }

  void mark_roles() {
    for (const PlanJob& job : plan_.jobs) {
      const auto* rule = context_.desk.records.find<model::Job>(job.job);
      if (rule == nullptr) continue;
      for (const std::string& role : rule->roles) {
        if (const auto mark = model::mark_named("planned", role)) marks_.insert(*mark);
      }
    }
  }

  bool keeps_back(const model::Hold& hold, const PlanJob& job, const model::Job* rule) const {
    if (has(hold.but, job.procedure)) return false;
    if (has(hold.procedures, job.procedure)) return true;
    if (rule == nullptr) return false;
    return has(hold.stages, rule->stage) || std::any_of(rule->roles.begin(), rule->roles.end(),
                                                        [&hold](const std::string& role) { return has(hold.roles, role); });
  }

  /// The first hold on record that keeps a job back, or empty.
  RecordRef hold_of(const PlanJob& job, const model::Job* rule) const {
    for (const auto& [id, hold] : context_.desk.records.holds) {
      if (keeps_back(hold, job, rule) && any_holds(context_, marks_, hold.when, false)) return hold.reference();
    }
    return {};
  }

  static std::string open_slot(const model::Procedure& procedure) {
    for (const auto& step : procedure.steps) {
      for (const RecordRef& named : step.on) {
        if (!named.kind() && !named.empty() && named.text().front() == '$') return named.text().substr(1);
      }
    }
    return {};
  }

  std::string path_of(const PlanJob& job) const {
    const auto& named = context_.watch.jobs;
    const auto at = std::find_if(named.begin(), named.end(), [&job](const auto& one) { return one.procedure == job.procedure; });
    return at == named.end() ? "symptoms" : "jobs." + std::to_string(at - named.begin());
  }

  void judge_steps(PlanJob& job) {
    job.open_slot = open_slot(job.bound);
    if (!job.open_slot.empty()) {
      job.state = State::held;
      return context_.desk.findings.add(report::Rule::ticket_slot, context_.watch.span_of(path_of(job)),
                                        "nothing fills the slot " + job.open_slot + " of " + job.procedure.id(), "fill it"),
             void();
    }
    auto faults = context_.judges.check_steps(context_.world(), job.bound);
    if (faults.empty()) return;
    job.state = State::held;
    context_.desk.findings.add(report::Rule::ticket_step, context_.watch.span_of(path_of(job)),
                               job.procedure.id() + " is left out: " + faults.front().message, faults.front().hint);
    job.fault = std::move(faults.front());
  }

  void judge() {
    for (PlanJob& job : plan_.jobs) {
      const auto* rule = context_.desk.records.find<model::Job>(job.job);
      if (rule != nullptr && !any_holds(context_, marks_, rule->only, true)) {
        job.state = State::not_this_watch;
        continue;
      }
      job.hold = hold_of(job, rule);
      if (!job.hold.empty()) job.state = State::held;
      if (job.state == State::done) judge_steps(job);
      put_cautions(context_, job.bound);
      if (rule != nullptr && has(rule->roles, "opens-back")) warn_of_leaks(context_, marks_, job.bound);
    }
  }

  /// By stage; within a stage what must come before, then the order in which they came in.
  void order() {
    auto& jobs = plan_.jobs;
    std::stable_sort(jobs.begin(), jobs.end(), [](const PlanJob& one, const PlanJob& other) { return one.stage < other.stage; });
    std::vector<PlanJob> ordered;
    while (!jobs.empty()) {
      auto next = std::find_if(jobs.begin(), jobs.end(), [&](const PlanJob& job) {
        return std::none_of(jobs.begin(), jobs.end(), [&](const PlanJob& other) { return comes_after(job, other); });
      });
      if (next == jobs.end()) next = jobs.begin();  // a circle, which check refuses
      ordered.push_back(std::move(*next));
      jobs.erase(next);
    }
    jobs = std::move(ordered);
  }

  bool comes_after(const PlanJob& later, const PlanJob& earlier) const {
    const auto* rule = context_.desk.records.find<model::Job>(later.job);
    return rule != nullptr && has(rule->after, earlier.procedure);
  }

  const Context& context_;
  Marks& marks_;
  Plan& plan_;
};

}  // namespace

void add_jobs(const Context& context, Marks& marks, Plan& plan) { JobList(context, marks, plan).run(); }

}  // namespace benchleaf::ticket
