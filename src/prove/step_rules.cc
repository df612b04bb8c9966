// Rules about steps: bench judges every procedure in every binding that its slots allow; here its faults become findings.

#include <algorithm>
#include <set>
#include <string>

#include "bench/step_checker.h"
#include "prove/checks.h"

namespace benchleaf::prove {
namespace {

using bench::StepLaw;
using report::Rule;

Rule rule_of(StepLaw law) {
  switch (law) {
    case StepLaw::never: return Rule::step_never;
    case StepLaw::not_known: return Rule::step_not_known;
    case StepLaw::limits: return Rule::step_limits;
    case StepLaw::part: return Rule::step_part;
    case StepLaw::mix_never: return Rule::mix_never;
    case StepLaw::mix_rinse: return Rule::mix_rinse;
    case StepLaw::mix_closed: return Rule::mix_closed;
    case StepLaw::mix_left: return Rule::mix_left;
    case StepLaw::mix_group: return Rule::mix_group;
    case StepLaw::wet_crust: return Rule::wet_crust;
    case StepLaw::wet_sanding: return Rule::wet_sanding;
    case StepLaw::flash_point: return Rule::heat_flash_point;
    case StepLaw::tank: return Rule::heat_tank;
    case StepLaw::heat: return Rule::heat_material;
  }
  return Rule::step_never;
}

/// Where a row of a published table stands, or no place for a path that is no row.
base::Span row_span(const model::Tables& tables, const std::string& row_id) {
  for (const auto& table : tables.published) {
    const std::string front = "table/" + table.name + "#";
    if (row_id.compare(0, front.size(), front) != 0) continue;
    for (const auto& row : table.rows) {
      if (row.key == row_id.substr(front.size())) return row.span;
    }
  }
  return {};
}

void add(const Proof& proof, const model::Procedure& procedure, const bench::StepFault& fault) {
  const std::string path = "steps." + std::to_string(fault.step) + "." + fault.field;
  auto& finding =
      proof.findings.add(rule_of(fault.law), procedure.span_of(path), fault.message + " (" + fault.ground + ")", fault.hint);
  if (const model::Record* record = proof.base.find(fault.record)) {
    finding.notes.push_back({record->span_of(fault.path), record->reference() + " says so"});
  } else if (fault.path.compare(0, 6, "table/") == 0) {
    finding.notes.push_back({row_span(proof.tables, fault.path), fault.path + " says so"});
  }
}

}  // namespace

void check_procedure_steps(const Proof& proof) {
  const bench::StepWorld world{proof.base, proof.tables};
  for (const auto& [id, procedure] : proof.base.procedures) {
    const auto bindings = bench::allowed_bindings(procedure);
    if (bindings.empty()) {
      proof.findings.add(
          Rule::step_bindings, procedure.span_of("slots"),
          "the slots allow more than " + std::to_string(bench::kMostBindings) + " combinations, which is too many to check",
          "make two procedures of it");
    }
    std::set<std::string> told;
    for (const auto& binding : bindings) {
      for (const auto& fault : bench::check_steps(world, bench::bound(procedure, binding))) {
        if (told.insert(std::to_string(fault.step) + fault.message).second) add(proof, procedure, fault);
      }
    }
  }
}

void check_symptoms_end(const Proof& proof) {
  for (const auto& [id, symptom] : proof.base.symptoms) {
    if (!symptom.usable("causes")) continue;
    const bool ends = std::any_of(symptom.causes.begin(), symptom.causes.end(),
                                  [](const auto& cause) { return !cause.procedure.empty() || !cause.stop.empty(); });
    if (ends) continue;
    proof.findings.add(Rule::symptom_end, symptom.span_of("causes"),
                       "no cause of " + symptom.id + " reaches a procedure, and none says where to stop",
                       "name a procedure, or say in stop: where to stop and whom to ask");
  }
}

}  // namespace benchleaf::prove
