// Rules about handling: what a bare module is worked in and what earths it, and
// how a leaking cell is taken out.

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "bench/ways.h"
#include "prove/handling_checks.h"
#include "prove/shared.h"

namespace benchleaf::prove {
namespace {

using model::Procedure;
using model::Tool;
using report::Rule;
using Step = Procedure::Step;

const Tool* tool_of(const Proof& proof, const model::RecordRef& reference) {
  const auto* record = record_of(proof, model::Kind::tool, reference);
  return record == nullptr || !record->usable("does") ? nullptr : &proof.base.tools.at(record->id);
}

/// Whether the tool says that it does this: what a tool does is asked for by rules alone, so it is read where it stands.
bool does(const Tool& tool, std::string_view what) {
  const model::Node* list = tool.root.find("does");
  return list != nullptr &&
         std::any_of(list->items.begin(), list->items.end(), [&](const model::Node& one) { return one.text == what; });
}

bool has_tool(const Proof& proof, const Step& step, std::string_view what) {
  return std::any_of(step.tools.begin(), step.tools.end(), [&](const auto& reference) {
    const Tool* tool = tool_of(proof, reference);
    return tool != nullptr && does(*tool, what);
  });
}

/// Whether the procedure lists the caution of a hazard, in its head or among
/// its steps.
bool lists_caution_of(const Proof& proof, const Procedure& procedure, std::string_view hazard) {
  const model::HazardCaution* row = proof.tables.hazard_caution(hazard);
  if (row == nullptr) return false;
  const std::string caution = "caution/" + row->caution;
  const auto& head = procedure.cautions;
  return std::any_of(head.begin(), head.end(), [&](const auto& one) { return one == caution; }) ||
         std::any_of(procedure.steps.begin(), procedure.steps.end(), [&](const Step& one) { return one.caution == caution; });
}

bool handles_cell(const Proof& proof, const Step& step) {
  return bench::ways_of({proof.base, proof.tables}, step).count("cell-handled") > 0;
}

bool meets_leak(const Proof& proof, const Step& step) {
  return std::any_of(step.meets.begin(), step.meets.end(), [&](const auto& reference) {
    const auto* record = record_of(proof, model::Kind::residue, reference);
    return record != nullptr && record->usable("left-by") && !proof.base.residues.at(record->id).left_by.empty();
  });
}

bool is_step(const Step& step) { return step.whole && step.caution.empty(); }

std::string step_path(std::size_t at, const char* field) { return "steps." + std::to_string(at) + "." + field; }

/// A step of a procedure that lists the caution on static, and works inside a
/// bag that charges itself.
void check_bags(const Proof& proof, const Procedure& procedure) {
  for (std::size_t i = 0; i < procedure.steps.size(); ++i) {
    const Step& step = procedure.steps[i];
    for (std::size_t k = 0; is_step(step) && k < step.tools.size(); ++k) {
      const Tool* tool = tool_of(proof, step.tools[k]);
      if (tool == nullptr || !does(*tool, "work-bag") || does(*tool, "static-dissipative")) continue;
      proof.findings
          .add(Rule::static_bag, procedure.span_of(step_path(i, "using") + "." + std::to_string(k)),
               "a bare module in " + tool->id + ", which is not said to be static-dissipative",
               "use a static-dissipative bag, or say in does: that this one is")
          .notes.push_back({tool->span, "so " + tool->reference()});
    }
  }
}

/// The first step that works without an earthed wrist: it touches something
/// before the wrist is earthed, or the wrist never is. Nothing where there is none.
std::optional<std::size_t> unearthed_step(const Proof& proof, const Procedure& procedure) {
  std::optional<std::size_t> first;
  for (std::size_t i = 0; i < procedure.steps.size(); ++i) {
    const Step& step = procedure.steps[i];
    if (!step.whole) return std::nullopt;
    if (!step.caution.empty()) continue;
    if (has_tool(proof, step, "earth")) return std::nullopt;
    if (!step.on.empty() || !step.meets.empty() || !step.with.empty() || handles_cell(proof, step)) return i;
    first = first.value_or(i);
  }
  return first;
}

void check_strap(const Proof& proof, const Procedure& procedure) {
  const auto at = unearthed_step(proof, procedure);
  if (!at) return;
  proof.findings.add(Rule::static_strap, procedure.span_of(step_path(*at, "do")),
                     "the procedure lists the caution on static, and this "
                     "step works on the open watch without an earthed wrist",
                     "put the wrist strap on in this step or before it, and "
                     "list it under using:");
}

void wants(const Proof& proof, const Procedure& procedure, std::size_t at, std::string_view what, const std::string& words) {
  proof.findings.add(Rule::leak_tools, procedure.span_of(step_path(at, "do")), "a leaking cell, and " + words,
                     "list under using: a tool that does " + std::string(what));
}

/// Eyes and hands before the leak is met; tape and a bag in the step that lifts
/// the cell.
void check_leak(const Proof& proof, const Procedure& procedure) {
  bool eyes = false, hands = false;
  bool lifted = false;
  const auto& steps = procedure.steps;
  const bool whole = std::all_of(steps.begin(), steps.end(), [](const Step& one) { return one.whole; });
  const bool leak =
      std::any_of(steps.begin(), steps.end(), [&](const Step& one) { return is_step(one) && meets_leak(proof, one); });
  if (!whole || !leak) return;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (!is_step(steps[i])) continue;
    eyes = eyes || has_tool(proof, steps[i], "eye-protection");
    hands = hands || has_tool(proof, steps[i], "hand-protection");
    const bool lifts = handles_cell(proof, steps[i]);
    if (!lifts && !meets_leak(proof, steps[i])) continue;
    if (!eyes) wants(proof, procedure, i, "eye-protection", "nothing before the eyes");
    if (!hands) wants(proof, procedure, i, "hand-protection", "bare hands");
    eyes = hands = true;
    if (!lifts || lifted) continue;
    lifted = true;
    if (bench::ways_of({proof.base, proof.tables}, steps[i]).count("faces-taped") == 0)
      proof.findings.add(Rule::leak_tools, procedure.span_of(step_path(i, "do")), "a leaking cell, and not both faces are taped",
                         "write: tape both faces");
    if (!has_tool(proof, steps[i], "cell-tape")) wants(proof, procedure, i, "cell-tape", "no tape over its faces");
    if (!has_tool(proof, steps[i], "leak-bag")) wants(proof, procedure, i, "leak-bag", "no bag for it");
  }
}

}  // namespace

void check_handling(const Proof& proof) {
  for (const auto& [id, procedure] : proof.base.procedures) {
    if (!procedure.usable("steps")) continue;
    check_leak(proof, procedure);
    if (!lists_caution_of(proof, procedure, "bare-module")) continue;
    check_bags(proof, procedure);
    check_strap(proof, procedure);
  }
}

}  // namespace benchleaf::prove
