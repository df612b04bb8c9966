// A plan decides by codes: with every sentence that calculators and checks write replaced by nonsense, five hundred watches have
// the same jobs, needs and holds.
#include <string>
#include <tuple>
#include <vector>

#include "bench/calculator.h"
#include "bench/step_checker.h"
#include "support/catch.h"
#include "ticket/made_up.h"
#include "ticket/planned.h"

using namespace benchleaf;

namespace {

constexpr const char* kNonsense = "wug blicket toma";
std::size_t replaced = 0;

void garble(std::string& sentence) {
  if (sentence.empty()) return;
  sentence = kNonsense;
  ++replaced;
}

void garble(std::vector<std::string>& sentences) {
  for (std::string& one : sentences) garble(one);
}

/// A figure stays; whatever a calculator says in words goes.
bench::Result reckon_in_nonsense(std::string_view name, const bench::Inputs& inputs, const bench::Context& context) {
  bench::Result result = bench::reckon(name, inputs, context);
  for (bench::Output& output : result.outputs) {
    garble(output.label);
    garble(output.formula);
    if (!output.value) garble(output.printed);
  }
  for (bench::CellItem& cell : result.cells) garble(cell.name);
  garble(result.working);
  garble(result.range);
  for (bench::Formula& formula : result.formulas) garble(formula.text);
  for (bench::Caution& caution : result.cautions) garble(caution.text);
  if (result.refusal) {
    garble(result.refusal->reason);
    garble(result.refusal->hint);
  }
  return result;
}

std::vector<bench::StepFault> check_in_nonsense(const bench::StepWorld& world, const model::Procedure& bound) {
  std::vector<bench::StepFault> faults = bench::check_steps(world, bound);
  for (bench::StepFault& fault : faults) {
    garble(fault.message);
    garble(fault.hint);
    garble(fault.ground);
  }
  return faults;
}

/// Jobs, holds and needs of a plan, as codes.
std::string codes_of(const ticket::Plan& plan) {
  std::string codes;
  for (const auto& job : plan.jobs) {
    codes +=
        job.procedure.text() + " " + std::to_string(static_cast<int>(job.state)) + " " + job.hold.text() + " " + job.open_slot;
    if (job.fault)
      codes += " law " + std::to_string(static_cast<int>(job.fault->law)) + " step " + std::to_string(job.fault->step);
    codes += "\n";
  }
  for (const auto& need : plan.needs) {
    codes += need.record.text() + " " + need.size + " " + std::to_string(need.count) + " " +
             std::to_string(static_cast<int>(need.purpose));
    for (const auto& other : need.instead)
      codes += " or " + other.record.text() + other.size + std::to_string(static_cast<int>(other.verdict));
    codes += "\n";
  }
  for (const auto& open : plan.questions) codes += open.question.text() + "\n";
  return codes;
}

}  // namespace

TEST_CASE("with nonsense for every sentence five hundred watches have the same jobs, needs and holds") {
  test::MadeUp made_up(20261201);
  const ticket::Judges nonsense{reckon_in_nonsense, check_in_nonsense};
  std::size_t lines = 0;
  for (int number = 0; number < 500; ++number) {
    const model::Watch watch = made_up.watch(number);
    const model::Stock* drawer = made_up.coin() ? &test::drawer_of_demonstration() : nullptr;
    report::Findings findings;
    const std::string real = codes_of(ticket::make_plan(test::bench_of(watch, drawer), findings));
    const std::string garbled = codes_of(ticket::make_plan(test::bench_of(watch, drawer, nonsense), findings));
    INFO(watch.id);
    CHECK(garbled == real);
    lines += real.size();
  }
  CHECK(replaced > 5000);
  CHECK(lines > 100000);
}
