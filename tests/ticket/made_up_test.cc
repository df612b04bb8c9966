// What must hold of any watch: five hundred made up from a fixed seed. The records are looked up here again, without the planner:
// what holds, what a step ruins, which cautions it needs.
#include <algorithm>
#include <string>
#include <vector>

#include "bench/step_checker.h"
#include "compose/uses.h"
#include "support/catch.h"
#include "ticket/made_up.h"
#include "ticket/planned.h"

using namespace benchleaf;
using test::MadeUp;
using test::real_book;
using State = ticket::PlanJob::State;
using model::Mark;

namespace {

constexpr unsigned kSeed = 20261130;
constexpr int kWatches = 500;

/// Looked up in the records alone, without the step checker: a liquid or an abrasive that a step puts on a material which its own
/// record says it ruins.
std::string ruins(const model::Procedure& procedure) {
  const auto& made = real_book();
  for (const auto& step : procedure.steps) {
    model::References materials;
    for (const model::RecordRef& part : step.on) {
      const auto of = bench::materials_of({made.records, made.tables}, part);
      materials.insert(materials.end(), of.begin(), of.end());
    }
    for (const model::RecordRef& agent : step.with) {
      const auto* liquid = bench::chemistry_named({made.records, made.tables}, agent);
      const auto* abrasive = bench::abrasive_named({made.records, made.tables}, agent);
      if (liquid == nullptr && abrasive == nullptr) continue;
      for (const auto& verdict : liquid != nullptr ? liquid->on_materials : abrasive->on_materials) {
        const bool meets = std::find(materials.begin(), materials.end(), verdict.material) != materials.end();
        if (meets && verdict.verdict == model::Verdict::never) return agent + " on " + verdict.material;
      }
    }
  }
  return {};
}

constexpr const char* kDirectCurrent = "caution/no-direct-current";

/// The first caution that a step needs and that has not been read before it, or empty. Where no liquid crystal is, none is hurt.
std::string lacks_caution(const model::Procedure& procedure, std::size_t& needs_seen, bool has_crystal_display = true) {
  const auto& made = real_book();
  for (const auto& need : bench::caution_needs({made.records, made.tables}, procedure)) {
    ++needs_seen;
    if (!has_crystal_display && need.caution == kDirectCurrent) continue;
    bool read = std::find(procedure.cautions.begin(), procedure.cautions.end(), need.caution) != procedure.cautions.end();
    for (std::size_t i = 0; i < need.step; ++i) read = read || procedure.steps[i].caution == need.caution;
    if (!read) return need.caution + " before step " + std::to_string(need.step) + " of " + procedure.id;
  }
  return {};
}

bool bears(const ticket::Plan& plan, Mark mark) {
  return std::find(plan.marks.begin(), plan.marks.end(), mark) != plan.marks.end();
}

bool has_role(const ticket::PlanJob& job, const std::string& role) {
  const auto* rule = real_book().records.find<model::Job>(job.job);
  return rule != nullptr && std::find(rule->roles.begin(), rule->roles.end(), role) != rule->roles.end();
}

bool does(const ticket::Plan& plan, const std::string& role) {
  return std::any_of(plan.jobs.begin(), plan.jobs.end(),
                     [&role](const auto& job) { return job.state == State::done && has_role(job, role); });
}

/// The sentence of a contradiction that a plan holds, or empty.
std::string contradiction(const ticket::Plan& plan) {
  if (bears(plan, Mark::lume_some) && does(plan, "opens-back")) return "stays closed, and is opened";
  if ((bears(plan, Mark::back_unknown) || bears(plan, Mark::back_none)) && does(plan, "fits-cell"))
    return "nobody can open it, and a cell is fitted";
  if (bears(plan, Mark::leak_lithium_or_other) && does(plan, "clears-leak")) return "nothing wet or dry, and a leak is cleared";
  if (bears(plan, Mark::leak_old) && test::is_done(plan, "clear-alkaline-crust"))
    return "may hold mercury, and is cleared as a young leak";
  if (bears(plan, Mark::cell_unknown) && plan.need_of(model::Kind::cell) != nullptr)
    return "the cell is not known, and one is ordered";
  if (bears(plan, Mark::polish_too_thin) && does(plan, "polishes-crystal")) return "too thin, and is sanded";
  int fits = 0;
  for (const auto& job : plan.jobs) fits += job.state == State::done && has_role(job, "fits-cell") ? 1 : 0;
  return fits > 1 && bears(plan, Mark::jobs_open) ? "the cell is fitted twice" : "";
}

/// Whether a condition holds by the marks of the plan and the record of the watch alone.
bool is_true(const model::Watch& watch, const ticket::Plan& plan, const model::Condition& condition) {
  for (const auto& asked : condition.traits) {
    if (std::none_of(asked.any_of.begin(), asked.any_of.end(), [&plan](Mark mark) { return bears(plan, mark); })) return false;
  }
  const auto names = [](const model::References& list, const model::RecordRef& one) {
    return std::find(list.begin(), list.end(), one) != list.end();
  };
  if (!condition.surface.empty() && (!watch.case_metal || !names(condition.surface, watch.case_metal->surface))) return false;
  return condition.residue.empty() && condition.symptom.empty();
}

/// A hold on record that a job is done against, or empty. Roles of jobs are marks that the holds of the plan did not see.
std::string done_against(const model::Watch& watch, const ticket::Plan& plan, const ticket::PlanJob& job) {
  const auto* rule = real_book().records.find<model::Job>(job.job);
  for (const auto& [id, hold] : real_book().records.holds) {
    const auto has = [](const auto& list, const auto& one) { return std::find(list.begin(), list.end(), one) != list.end(); };
    if (rule == nullptr || has(hold.but, job.procedure)) continue;
    const bool keeps =
        has(hold.procedures, job.procedure) || has(hold.stages, rule->stage) ||
        std::any_of(rule->roles.begin(), rule->roles.end(), [&](const auto& role) { return has(hold.roles, role); });
    const bool now = std::any_of(hold.when.begin(), hold.when.end(), [&](const auto& one) { return is_true(watch, plan, one); });
    if (keeps && now) return id;
  }
  return {};
}

/// Every cause with a procedure has its job, and every job that is not done says why.
void check_symptoms(const model::Watch& watch, const ticket::Plan& plan, std::size_t& causes) {
  for (const model::RecordRef& ticked : watch.symptoms) {
    const auto* symptom = real_book().records.find<model::Symptom>(ticked);
    REQUIRE(symptom != nullptr);
    for (std::size_t i = 0; i < symptom->causes.size(); ++i) {
      ++causes;
      INFO(ticked.text() << " " << i);
      const auto is_this = [&](const ticket::PlanCause& one) { return one.symptom == ticked && one.cause == i; };
      const bool planned = std::any_of(plan.jobs.begin(), plan.jobs.end(), [&](const auto& job) {
        return std::any_of(job.causes.begin(), job.causes.end(), is_this);
      });
      const bool open =
          std::any_of(plan.open_causes.begin(), plan.open_causes.end(), [&](const auto& one) { return is_this(one.cause); });
      CHECK(planned == !symptom->causes[i].procedure.empty());
      CHECK(planned != open);
    }
  }
}

void check_waiting(const compose::Desk& desk, const ticket::Plan& plan, const ticket::Sheets& sheets) {
  const ticket::SheetSection* waits = sheets.section("waits");
  std::string said;
  if (waits != nullptr) {
    for (const auto& line : waits->lines) said += ticket::line_text(line, real_book().records) + "\n";
  }
  for (const auto& job : plan.jobs) {
    if (job.state == State::done) continue;
    INFO(job.procedure.text());
    CHECK_FALSE(ticket::why_waits(desk, job).empty());
    if (!plan.one_page) CHECK(said.find(base::to_terminal(ticket::job_title(desk, job))) != std::string::npos);
  }
}

}  // namespace

TEST_CASE("no plan of five hundred watches contradicts itself, does a held job, or leaves a symptom unanswered") {
  MadeUp made_up(kSeed);
  const compose::Uses uses(real_book().records);
  std::size_t done = 0;
  std::size_t held = 0;
  std::size_t needs = 0;
  std::size_t causes = 0;
  for (int number = 0; number < kWatches; ++number) {
    const model::Watch watch = made_up.watch(number);
    const model::Stock* drawer = made_up.coin() ? &test::drawer_of_demonstration() : nullptr;
    report::Findings findings;
    const ticket::Bench bench = test::bench_of(watch, drawer);
    const ticket::Plan plan = ticket::make_plan(bench, findings);
    const ticket::Sheets sheets = ticket::make_sheets(bench, plan, findings);
    const compose::Desk desk{bench.records, bench.tables, bench.derived, uses, findings};
    INFO(watch.id);
    CHECK(contradiction(plan).empty());
    check_symptoms(watch, plan, causes);
    check_waiting(desk, plan, sheets);
    std::size_t steps = 0;
    for (const auto& job : plan.jobs) {
      if (job.state != State::done) {
        ++held;
        continue;
      }
      ++done;
      ++steps;
      INFO(job.procedure.text());
      CHECK(bench::check_steps({bench.records, bench.tables}, job.bound).empty());
      CHECK(ruins(job.bound).empty());
      CHECK(lacks_caution(job.bound, needs, false).empty());
      CHECK(done_against(watch, plan, job).empty());
    }
    CHECK(sheets.jobs.size() == (plan.one_page ? 1 : steps));
  }
  CHECK(done > 1000);
  CHECK(held > 1000);
  CHECK(needs > 2000);
  CHECK(causes > 1000);
}

TEST_CASE("the checks of this test refuse what is wrong") {
  const auto& records = real_book().records;
  model::Procedure crust = records.procedures.at("clear-alkaline-crust");
  std::size_t needs = 0;
  CHECK(lacks_caution(crust, needs).empty());
  crust.steps.erase(
      std::remove_if(crust.steps.begin(), crust.steps.end(), [](const auto& step) { return !step.caution.empty(); }),
      crust.steps.end());
  CHECK_FALSE(lacks_caution(crust, needs).empty());
  for (auto& step : crust.steps) {
    if (!step.with.empty()) step.on = {model::RecordRef("part/polariser")};
  }
  CHECK_FALSE(ruins(crust).empty());
  ticket::Plan plan;
  ticket::PlanJob opens;
  opens.job = model::RecordRef("job/open-a-snap-back");
  plan.jobs = {opens};
  plan.marks = {Mark::lume_some};
  CHECK_FALSE(contradiction(plan).empty());
}
