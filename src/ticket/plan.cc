// In: a watch, a drawer, the handbook's records. Out: the plan, in codes and records. The order of the parts is the order in
// which they need each other.
#include "ticket/plan.h"

#include <algorithm>

#include "compose/uses.h"
#include "derive/bench_figures.h"
#include "ticket/context.h"
#include "ticket/figures.h"
#include "ticket/jobs.h"
#include "ticket/needs.h"

namespace benchleaf::ticket {

namespace {

/// Whether two needs are the same thing.
bool is_same(const PlanNeed& one, const PlanNeed& other) {
  return one.record == other.record && one.size == other.size && one.purpose == other.purpose;
}

void add_questions(const Context& context, const Marks& marks, Plan& plan) {
  for (const model::Question* question : questions_in_order(context.desk.records)) {
    if (any_holds(context, marks, question->open, false))
      plan.questions.push_back({question->reference(), question->field, question->back_off});
  }
}

/// One page in all: a plain change of the cell, whose every job has a short form.
bool fits_one_page(const Context& context, const Marks& marks, const Plan& plan) {
  const bool plain = marks.count(Mark::wish_new_cell) > 0 && marks.count(Mark::jobs_open) > 0;
  return plain && std::all_of(plan.jobs.begin(), plan.jobs.end(), [&context](const PlanJob& job) {
           const auto* rule = context.desk.records.find<model::Job>(job.job);
           return job.state != PlanJob::State::held && rule != nullptr &&
                  (job.state == PlanJob::State::not_this_watch || !rule->brief.empty());
         });
}

/// What goes into the watch decides what its readings are held against.
Mark mark_of_fit(const Context& context, const Plan& plan) {
  const PlanNeed* need = plan.need_of(model::Kind::cell);
  const model::Cell* cell = need == nullptr ? nullptr : context.desk.cell(need->record);
  if (cell == nullptr) return Mark::fits_none;
  if (compose::is_lithium(*cell)) return Mark::fits_lithium;
  return cell->system == "silver-oxide" ? Mark::fits_silver : Mark::fits_other;
}

Plan plan_for(const Context& context) {
  Plan plan;
  plan.watch = context.watch.id;
  plan.number = context.watch.number;
  plan.title = context.watch.title;
  derive::add_stated_facts(context.watch, plan.facts);
  reckon_gasket(context, plan);
  Marks marks = marks_of(context);
  if (const auto polish = reckon_ladder(context, plan)) marks.insert(*polish);
  add_jobs(context, marks, plan);
  add_questions(context, marks, plan);
  reckon_doses(context, plan);
  add_needs(context, marks, plan);
  marks.insert(mark_of_fit(context, plan));
  plan.one_page = fits_one_page(context, marks, plan);
  plan.marks.assign(marks.begin(), marks.end());
  return plan;
}

}  // namespace

std::vector<const model::Question*> questions_in_order(const model::KnowledgeBase& records) {
  std::vector<const model::Question*> all;
  for (const std::string_view section : question_sections()) {
    const std::size_t first = all.size();
    for (const auto& [id, question] : records.questions) {
      if (question.section == section) all.push_back(&question);
    }
    std::stable_sort(all.begin() + static_cast<std::ptrdiff_t>(first), all.end(),
                     [](const auto* one, const auto* other) { return one->order < other->order; });
  }
  return all;
}

const std::vector<std::string_view>& question_sections() {
  static const std::vector<std::string_view> kSections = {"watch", "build", "cells", "crystal", "gasket", "ready", "jobs"};
  return kSections;
}

int Plan::number_of(const model::RecordRef& procedure) const {
  int place = 0;
  for (const PlanJob& one : jobs) {
    if (one.state != PlanJob::State::done) continue;
    ++place;
    if (one.procedure == procedure) return place;
  }
  return 0;
}

const PlanJob* Plan::job(const model::RecordRef& procedure) const {
  const auto found = std::find_if(jobs.begin(), jobs.end(), [&](const PlanJob& one) { return one.procedure == procedure; });
  return found == jobs.end() ? nullptr : &*found;
}

const PlanNeed* Plan::need_of(model::Kind kind) const {
  const auto found = std::find_if(needs.begin(), needs.end(), [kind](const PlanNeed& need) {
    return need.record.is(kind) && need.purpose == PlanNeed::For::fit;
  });
  return found == needs.end() ? nullptr : &*found;
}

Plan make_plan(const Bench& bench, report::Findings& findings) {
  const compose::Uses uses(bench.records);
  const compose::Desk desk{bench.records, bench.tables, bench.derived, uses, findings};
  const model::FactBase figures = derive::bench_figures(bench.records, bench.tables);
  const std::optional<model::Stock> ready = ready_stock(desk, figures, bench);
  Plan plan = plan_for({desk, figures, bench.watch, ready ? &*ready : bench.drawer, !ready, bench.judges});
  if (bench.drawer != nullptr) plan.drawer = bench.drawer->id;
  return plan;
}

std::vector<PlanNeed> shopping_list(const std::vector<Plan>& plans) {
  std::vector<PlanNeed> list;
  for (const Plan& plan : plans) {
    for (const PlanNeed& need : plan.needs) {
      const auto there = std::find_if(list.begin(), list.end(), [&need](const PlanNeed& one) { return is_same(one, need); });
      if (there == list.end())
        list.push_back(need);
      else if (need.used_up)
        there->count += need.count;
    }
  }
  for (PlanNeed& need : list) need.count -= std::min(need.count, need.in_drawer);
  list.erase(std::remove_if(list.begin(), list.end(), [](const PlanNeed& one) { return one.count == 0; }), list.end());
  std::stable_sort(list.begin(), list.end(), [](const PlanNeed& one, const PlanNeed& other) {
    return one.record == other.record ? one.size < other.size : one.record < other.record;
  });
  return list;
}

}  // namespace benchleaf::ticket
