// Every caution that a rule asks for is taken out of every procedure of the real content, one at a time: `check` must fail
// each time. An item that no rule asks for says why it stands there. In process, over one knowledge base that is put back
// as it was after each trial.

#include "support/catch.h"

#include <algorithm>
#include <set>
#include <string>

#include "bench/step_checker.h"
#include "derive/derive.h"
#include "prove/prove.h"
#include "read/content_reader.h"
#include "read/disk_files.h"
#include "read/table_reader.h"

namespace {

using namespace benchleaf;

struct RealContent {
  base::FileTable files;
  report::Findings findings;
  model::Tables tables;
  model::KnowledgeBase records;
  derive::Derived derived;

  RealContent() {
    const test::DiskFiles schema("schema");
    const read::Shapes shapes = read::load_shapes(schema, files, findings);
    tables = read::read_tables(schema, shapes, files, findings);
    records = read::read_content(test::DiskFiles("content"), shapes, files, findings);
    derived = derive::derive(records, tables, findings);
    // The rules about steps read no cell: without them a trial takes a fraction of the time.
    records.cells.clear();
  }

  /// Errors of rules about cautions in this procedure as it now is.
  std::size_t caution_errors(const model::Procedure& procedure) const {
    report::Findings found;
    prove::prove(records, tables, derived, found);
    std::size_t errors = 0;
    for (const auto& finding : found.all()) {
      const bool about_cautions = report::rule_info(finding.rule).id.substr(0, 8) == "caution.";
      if (about_cautions && finding.where.file == procedure.file && finding.severity == report::Severity::error) ++errors;
    }
    return errors;
  }

  std::set<std::string> needed_by(const model::Procedure& procedure) const {
    const bench::StepWorld world{records, tables};
    std::set<std::string> cautions;
    for (const auto& binding : bench::allowed_bindings(procedure)) {
      for (const auto& need : bench::caution_needs(world, bench::bound(procedure, binding))) cautions.insert(need.caution);
    }
    return cautions;
  }
};

}  // namespace

TEST_CASE("a required caution that is taken out is missed, in every procedure") {
  RealContent real;
  int taken = 0;
  for (auto& [id, procedure] : real.records.procedures) {
    INFO(id);
    REQUIRE(real.caution_errors(procedure) == 0);
    const std::set<std::string> needed = real.needed_by(procedure);
    for (std::size_t i = 0; i < procedure.steps.size(); ++i) {
      const std::string caution = procedure.steps[i].caution;
      if (caution.empty()) continue;
      INFO(caution);
      const bool again = std::any_of(procedure.steps.begin(), procedure.steps.begin() + static_cast<std::ptrdiff_t>(i),
                                     [&caution](const auto& step) { return step.caution == caution; });
      CHECK((needed.count(caution) > 0 || !procedure.steps[i].why.empty()));
      if (needed.count(caution) == 0 || again) continue;
      const auto whole = procedure.steps;
      std::erase_if(procedure.steps, [&caution](const auto& step) { return step.caution == caution; });
      CHECK(real.caution_errors(procedure) > 0);
      procedure.steps = whole;
      ++taken;
    }
    const auto head = procedure.cautions;
    for (const std::string& caution : head) {
      INFO(caution);
      CHECK(needed.count(caution) > 0);
      std::erase(procedure.cautions, caution);
      CHECK(real.caution_errors(procedure) > 0);
      procedure.cautions = head;
      ++taken;
    }
  }
  CHECK(taken >= 40);
}

TEST_CASE("a grave caution that is moved below its step is missed, in every procedure") {
  RealContent real;
  int moved = 0;
  for (auto& [id, procedure] : real.records.procedures) {
    INFO(id);
    const std::set<std::string> needed = real.needed_by(procedure);
    const auto whole = procedure.steps;
    for (std::size_t i = 0; i + 1 < whole.size(); ++i) {
      if (whole[i].caution.empty() || needed.count(whole[i].caution) == 0) continue;
      INFO(whole[i].caution.text());
      // To the end: below every step that may need it.
      std::rotate(procedure.steps.begin() + static_cast<std::ptrdiff_t>(i),
                  procedure.steps.begin() + static_cast<std::ptrdiff_t>(i) + 1, procedure.steps.end());
      CHECK(real.caution_errors(procedure) > 0);
      procedure.steps = whole;
      ++moved;
    }
  }
  CHECK(moved >= 30);
}
