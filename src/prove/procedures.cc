// Rules about a procedure as a whole: the tools it lists, the time it takes, the grades it goes through.

#include <algorithm>
#include <set>
#include <string>

#include "base/number.h"
#include "prove/published_checks.h"
#include "prove/shared.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using base::Unit;
using model::Procedure;
using report::Rule;

/// Whether every step of it could be read.
bool is_whole(const Procedure& procedure) {
  return std::all_of(procedure.steps.begin(), procedure.steps.end(), [](const auto& step) { return step.whole; });
}

void unused_tools(const Proof& proof, const Procedure& procedure) {
  std::set<std::string> used;
  for (const auto& step : procedure.steps) used.insert(step.tools.begin(), step.tools.end());
  for (std::size_t i = 0; i < procedure.tools.size(); ++i) {
    if (used.count(procedure.tools[i]) > 0 || record_of(proof, model::Kind::tool, procedure.tools[i]) == nullptr) continue;
    proof.findings.add(Rule::procedure_tools, procedure.span_of("tools." + std::to_string(i)),
                       "found " + procedure.tools[i] + " in the list, but no step uses it",
                       "take it out, or name it at its step");
  }
}

void unlisted_tools(const Proof& proof, const Procedure& procedure) {
  const std::set<std::string> listed(procedure.tools.begin(), procedure.tools.end());
  for (std::size_t i = 0; i < procedure.steps.size(); ++i) {
    const auto& step = procedure.steps[i];
    for (std::size_t k = 0; k < step.tools.size(); ++k) {
      const bool slot = !step.tools[k].empty() && step.tools[k].text().front() == '$';
      if (slot || listed.count(step.tools[k]) > 0) continue;
      proof.findings.add(Rule::procedure_tools, procedure.span_of("steps." + std::to_string(i) + ".using." + std::to_string(k)),
                         "the step uses " + step.tools[k] + ", which the list of tools has not", "add it to the list");
    }
  }
}

}  // namespace

void check_procedure_tools(const Proof& proof) {
  for (const auto& [id, procedure] : proof.base.procedures) {
    if (!procedure.usable("tools") || !is_whole(procedure)) continue;
    unused_tools(proof, procedure);
    unlisted_tools(proof, procedure);
  }
}

void check_procedure_times(const Proof& proof) {
  // A step of the bench is a minute of looking or a quarter of an hour of soaking.
  constexpr double kLeast = 1, kMost = 12;
  for (const auto& [id, procedure] : proof.base.procedures) {
    const auto time = procedure.time && procedure.time->has_value() && procedure.usable("time") ? procedure.time->in(Unit::minute)
                                                                                                : std::nullopt;
    const auto steps =
        std::count_if(procedure.steps.begin(), procedure.steps.end(), [](const auto& step) { return step.caution.empty(); });
    if (!time || steps == 0 || !procedure.usable("steps")) continue;
    const auto count = static_cast<double>(steps);
    if (base::tidy(time->low / count) >= kLeast && base::tidy(time->high / count) <= kMost) continue;
    proof.findings
        .add(Rule::procedure_time, procedure.span_of("time"),
             "found " + shown(procedure.time) + " for " + std::to_string(steps) +
                 " steps, which is less than 1 or more than 12 min a step",
             "correct the time, or make steps of what takes long")
        .notes.push_back({procedure.span_of("steps"), "the steps"});
  }
}

namespace {

/// A step that works with a graded abrasive says with which grade of it.
void check_grade_is_named(const Proof& proof, const model::Procedure& procedure, std::size_t i) {
  const std::string path = "steps." + std::to_string(i);
  if (!procedure.steps[i].grade.empty() || !procedure.steps[i].whole || !procedure.usable(path + ".grade")) return;
  for (const model::RecordRef& agent : procedure.steps[i].with) {
    const auto* record = record_of(proof, model::Kind::abrasive, agent);
    if (record == nullptr || proof.base.abrasives.at(record->id).grades.empty() || !record->usable("grades")) continue;
    proof.findings.add(Rule::procedure_grade, procedure.span_of(path + ".with"), "found " + record->id + " without a grade",
                       "say which: grade: P1200");
  }
}

}  // namespace

void check_grade_ladders(const Proof& proof) {
  for (const auto& [id, procedure] : proof.base.procedures) {
    for (std::size_t i = 0; i < procedure.steps.size(); ++i) check_grade_is_named(proof, procedure, i);
    std::string before;
    double median = 0;
    for (std::size_t i = 0; i < procedure.steps.size(); ++i) {
      const std::string& grade = procedure.steps[i].grade;
      const std::string path = "steps." + std::to_string(i) + ".grade";
      if (grade.empty() || !procedure.usable(path)) continue;
      const auto* row = standards::row_of(proof.tables, "abrasive-grades", grade.substr(0, 1) + "-" + grade.substr(1));
      const auto own = row == nullptr ? std::nullopt : standards::cell_value(*row, "median", Unit::micrometre);
      if (own && median > 0 && *own > median) {
        proof.findings.add(Rule::procedure_ladder, procedure.span_of(path),
                           "found " + grade + " after " + before + ", which is finer",
                           "go from coarse to fine: a coarser grade undoes what was done");
      }
      if (own) median = *own;
      before = grade;
    }
  }
}

void check_year_is_told(const Proof& proof) {
  for (const auto& [id, procedure] : proof.base.procedures) {
    if (procedure.bought_after == 0 || !procedure.usable("bought-after") || !procedure.usable("before")) continue;
    const std::string year = std::to_string(procedure.bought_after);
    const auto& lines = procedure.before;
    if (std::any_of(lines.begin(), lines.end(), [&](const auto& line) { return line.find(year) != std::string::npos; })) continue;
    proof.findings.add(Rule::voice_year, procedure.span_of("bought-after"),
                       "found bought-after: " + year + ", which no line of before says",
                       "say in before that the cell was bought after " + year);
  }
}

}  // namespace benchleaf::prove
