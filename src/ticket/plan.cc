// In: a watch, a drawer, the handbook's records. Out: the plan. The order of the parts is the order in which they need each
// other; the order of the sections is that of the bench.
#include "ticket/plan.h"

#include <algorithm>

#include "compose/uses.h"
#include "derive/bench_figures.h"
#include "derive/fact_of_output.h"
#include "ticket/planner.h"

namespace benchleaf::compose {

namespace {

template <class Record>
const Record* record_in(const std::map<std::string, Record, std::less<>>& all, const std::string& reference) {
  const auto found = all.find(Planner::id_of(reference));
  return reference.empty() || found == all.end() ? nullptr : &found->second;
}

/// Whether two needs are the same thing; cells for a test are told apart by their words.
bool is_same(const PlanNeed& one, const PlanNeed& other) {
  if (one.record != other.record || one.size != other.size || one.for_test != other.for_test) return false;
  return !one.for_test || one.words == other.words;
}

}  // namespace

const model::Module* Planner::module() const { return record_in(desk.records.modules, watch.module); }
const model::Crystal* Planner::crystal() const { return record_in(desk.records.crystals, watch.crystal); }

bench::Result Planner::ask(const std::string& calculator, const Words& words, const std::string& name) {
  bench::Inputs inputs;
  for (const auto& [key, value] : words) inputs.emplace(key, bench::Given{value, model::Trust::given, {}});
  bench::Result result = bench::reckon(calculator, inputs, {desk.tables, figures});
  for (const bench::Output& output : result.outputs)
    plan.facts.add(derive::fact_of_output(output, watch.reference(), name.empty() ? calculator : name));
  return result;
}

void Planner::find(report::Rule rule, std::string_view path, std::string message, std::string hint) {
  desk.findings.add(rule, watch.span_of(path), std::move(message), std::move(hint));
}

Line& Planner::say_fact(Line& line, const std::string& name) const {
  const model::Fact* found = fact(name);
  return found == nullptr ? line : line.fact(*found).say("\u00A0").sign({found->trust, found->derived});
}

void SectionMaker::tick(Line& line) { section_.lines.push_back({PlanLine::Kind::tick, line.take(), {}, false}); }
void SectionMaker::tick(std::string words) {
  section_.lines.push_back({PlanLine::Kind::tick, {model::text_run(std::move(words))}, {}, false});
}
void SectionMaker::words(Line& line) { section_.lines.push_back({PlanLine::Kind::words, line.take(), {}, false}); }
void SectionMaker::words(std::string words) {
  section_.lines.push_back({PlanLine::Kind::words, {model::text_run(std::move(words))}, {}, false});
}
void SectionMaker::step(model::Runs runs) { section_.lines.push_back({PlanLine::Kind::step, std::move(runs), {}, false}); }

void SectionMaker::caution(const std::string& record) {
  std::vector<std::string>& said = planner_.cautions_said;
  const bool again = std::find(said.begin(), said.end(), record) != said.end();
  if (!again) said.push_back(record);
  section_.lines.push_back({PlanLine::Kind::caution, {}, record, again});
}

void SectionMaker::close() {
  if (!section_.lines.empty()) planner_.plan.sections.push_back(std::move(section_));
}

bool is_known(const std::optional<base::Quantity>& quantity) { return quantity && quantity->has_value(); }

Plan make_plan(const model::KnowledgeBase& records, const model::Tables& tables, const derive::Derived& derived,
               const model::Watch& watch, const model::Stock* drawer, report::Findings& findings) {
  const Uses uses(records);
  const Desk desk{records, tables, derived, uses, findings};
  const model::FactBase figures = derive::bench_figures(records, tables);
  const std::optional<model::Stock> ready = drawer == nullptr ? drawer_of(watch) : std::nullopt;
  Planner planner{desk, figures, watch, ready ? &*ready : drawer, !ready, {}, {}, {}, {}, {}, false, {}};
  planner.plan.watch = watch.id;
  planner.plan.number = watch.number;
  planner.plan.title = watch.title;
  if (drawer != nullptr) planner.plan.drawer = drawer->id;
  derive::add_stated_facts(watch, planner.plan.facts);
  planner.add_checks();
  planner.reckon_gasket();
  planner.reckon_ladder();
  planner.add_jobs();
  planner.reckon_doses();
  planner.reckon_life();
  planner.add_needs();
  planner.add_front_sections();
  planner.add_ready_sections();
  planner.add_job_sections();
  planner.add_closing_sections();
  return std::move(planner.plan);
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

}  // namespace benchleaf::compose
