// In: the jobs that are done, gasket and ladder, the drawer. Out: what the plan needs. Nothing is got for a job that waits.
#include "ticket/needs.h"

#include <algorithm>

#include "base/quantity.h"
#include "ticket/cells.h"
#include "ticket/figures.h"

namespace benchleaf::ticket {

namespace {

PlanNeed need_of_record(RecordRef record) {
  PlanNeed need;
  need.record = std::move(record);
  return need;
}

void add_cells(const Context& context, Plan& plan) {
  if (!does(context, plan, "uses-cell")) return;
  const std::vector<ChosenCell> cells = choose_cells(context);
  for (const ChosenCell& one : cells) {
    PlanNeed need = need_of_record(one.cell);
    need.count = one.count;
    need.instead = one.instead;
    plan.needs.push_back(std::move(need));
  }
  if (cells.size() == 1) reckon_life(context, cells.front().cell, plan);
}

/// Whether the drawer holds a size of a series, and all of it too old.
bool is_past_in_drawer(const Context& context, const RecordRef& series, const std::string& size) {
  if (context.drawer == nullptr) return false;
  bool any = false;
  for (const model::Stock::Item& item : context.drawer->items) {
    if (item.item != series || item.count == 0 || !item.size || base::printed(*item.size) != size) continue;
    if (!is_past(context, item)) return false;
    any = true;
  }
  return any;
}

void add_gasket(const Context& context, Plan& plan) {
  if (!does(context, plan, "renews-gasket") && !does(context, plan, "measures-seat")) return;
  if (plan.gaskets.empty()) {
    // the old gasket tells what to have at hand, and the seat then chooses
    if (plan.facts.find(context.watch.reference() + "#gasket-fit.size") == nullptr) return;
    PlanNeed need = need_of_record(context.series());
    need.to_measure = true;
    return void(plan.needs.push_back(std::move(need)));
  }
  PlanNeed need = need_of_record(RecordRef(std::string_view(plan.gaskets.front().record)));
  need.size = plan.gaskets.front().size.printed;
  for (std::size_t i = 1; i < plan.gaskets.size(); ++i) {
    const std::string& size = plan.gaskets[i].size.printed;
    need.instead.push_back(
        {need.record, size, plan.gaskets[i].verdict, bench::Code::none, is_past_in_drawer(context, need.record, size)});
  }
  plan.needs.push_back(std::move(need));
}

void add_new_crystal(const Context& context, const Marks& marks, Plan& plan) {
  const model::Crystal* crystal = context.crystal();
  const bool planned = does(context, plan, "changes-crystal");
  if (crystal == nullptr || (marks.count(Mark::polish_too_thin) == 0 && !planned)) return;
  PlanNeed need = need_of_record(crystal->reference());
  const auto& size = context.watch.crystal_size;
  if (size && is_known(size->diameter)) need.size = base::printed(*size->diameter);
  need.to_measure = true;
  plan.needs.push_back(std::move(need));
}

/// Old bars are not fitted again.
void add_spring_bars(const Context& context, Plan& plan) {
  const References bars = context.parts_of("spring-bar");
  if (bars.empty() || !does(context, plan, "fits-bars")) return;
  PlanNeed need = need_of_record(bars.front());
  need.count = 2;
  need.to_measure = true;
  if (is_known(context.watch.lug_width)) need.size = base::printed(*context.watch.lug_width);
  plan.needs.push_back(std::move(need));
}

void add_papers(const Context& context, Plan& plan) {
  if (!does(context, plan, "polishes-crystal")) return;
  for (const std::string& grade : plan.rungs) {
    PlanNeed need = need_of_record(scale_of(context, grade));
    need.size = grade;
    need.used_up = false;
    plan.needs.push_back(std::move(need));
  }
}

/// Liquids and tools of the steps that are done.
void add_bench(const Context& context, Plan& plan) {
  References wanted;
  References tools;
  for (const PlanJob& job : plan.jobs) {
    if (job.state != PlanJob::State::done) continue;
    for (const auto& step : job.bound.steps) {
      for (const RecordRef& agent : step.with) {
        if (agent.is(model::Kind::chemistry)) add_once(wanted, agent);
      }
      for (const RecordRef& tool : step.tools) add_once(tools, tool);
    }
  }
  wanted.insert(wanted.end(), tools.begin(), tools.end());
  for (const RecordRef& record : wanted) {
    if (context.desk.records.find(record) == nullptr) continue;
    PlanNeed need = need_of_record(record);
    need.used_up = false;
    plan.needs.push_back(std::move(need));
  }
}

/// What the test of a new cell needs beside those that go in: one more of their packet, and one to compare it with.
void add_test_cells(const Context& context, Plan& plan) {
  if (!does(context, plan, "tests-cell")) return;
  auto& needs = plan.needs;
  const auto fitted =
      std::find_if(needs.begin(), needs.end(), [](const PlanNeed& need) { return need.record.is(model::Kind::cell); });
  if (fitted == needs.end()) return;
  const bool has_spare = fitted->in_drawer > fitted->count;
  if (context.drawer != nullptr && !has_spare) {  // the test of another packet says nothing of these
    fitted->in_drawer = 0;
    fitted->place.clear();
  }
  const RecordRef record = fitted->record;
  for (const auto purpose : {PlanNeed::For::spare_of_packet, PlanNeed::For::other_packet}) {
    PlanNeed need = need_of_record(record);
    need.purpose = purpose;
    need.in_drawer = purpose == PlanNeed::For::spare_of_packet && has_spare ? 1 : 0;  // no drawer tells packets apart
    needs.push_back(std::move(need));
  }
}

/// Counts what the drawer holds of each.
void look_into_drawer(const Context& context, Plan& plan) {
  if (context.drawer == nullptr) return;
  for (PlanNeed& need : plan.needs) {
    for (const model::Stock::Item& item : context.drawer->items) {
      if (item.item != need.record || item.count == 0 || is_past(context, item)) continue;
      const std::string size = item.size ? base::printed(*item.size) : item.grade;
      if (!need.size.empty() && !size.empty() && size != need.size) continue;
      need.in_drawer += item.count;
      need.place += (need.place.empty() ? "" : "; ") + item.place;
    }
  }
}

}  // namespace

bool does(const Context& context, const Plan& plan, std::string_view role) {
  return std::any_of(plan.jobs.begin(), plan.jobs.end(), [&](const PlanJob& job) {
    if (job.state != PlanJob::State::done) return false;
    const auto* rule = context.desk.records.find<model::Job>(job.job);
    return rule != nullptr && has(rule->roles, role);
  });
}

void add_needs(const Context& context, const Marks& marks, Plan& plan) {
  add_cells(context, plan);
  add_gasket(context, plan);
  add_new_crystal(context, marks, plan);
  add_spring_bars(context, plan);
  add_papers(context, plan);
  add_bench(context, plan);
  look_into_drawer(context, plan);
  add_test_cells(context, plan);
}

}  // namespace benchleaf::ticket
