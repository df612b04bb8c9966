// In: the crystal and the jobs of a watch. Out: which of its measures they use, and what is left to do where it is not polished.
#include <algorithm>

#include "base/quantity.h"
#include "ticket/planner.h"

namespace benchleaf::compose {

namespace {

bool changes_crystal(const model::Watch::Job& job) {
  return job.procedure == "procedure/change-a-glass-crystal" || job.procedure == "procedure/change-a-pressed-crystal";
}

}  // namespace

bool may_be_sanded(const Planner& planner) {
  const std::string material = planner.crystal_material();
  return material.empty() || material == "material/acrylic";
}

bool is_polish(const model::Procedure& procedure) {
  return std::any_of(procedure.steps.begin(), procedure.steps.end(), [](const auto& step) { return !step.grade.empty(); });
}

bool polishes_crystal(const Planner& planner, const std::vector<model::Watch::Job>& jobs) {
  const auto& procedures = planner.desk.records.procedures;
  return std::any_of(jobs.begin(), jobs.end(), [&procedures](const model::Watch::Job& job) {
    const auto found = procedures.find(Planner::id_of(job.procedure));
    return found != procedures.end() && is_polish(found->second);
  });
}

bool uses_scratch(const Planner& planner) {
  const std::vector<model::Watch::Job>& named = planner.watch.jobs;
  // without jobs the measures themselves decide whether it is polished
  return may_be_sanded(planner) && (named.empty() || polishes_crystal(planner, named));
}

bool uses_crystal_size(const Planner& planner) {
  const std::vector<model::Watch::Job>& named = planner.watch.jobs;
  return uses_scratch(planner) || std::any_of(named.begin(), named.end(), changes_crystal);
}

std::string instead_of_polish(const Planner& planner) {
  if (!planner.too_thin && may_be_sanded(planner)) return "Until then the scratch stays.";
  const bench::StepWorld world{planner.desk.records, planner.desk.tables};
  const auto& size = planner.watch.crystal_size;
  std::string words = "The scratch stays, or the crystal is changed: ";
  words += planner.crystal() == nullptr ? "one of its kind" : bench::words_for(world, planner.crystal()->reference());
  if (size && is_known(size->diameter)) words += ", about " + base::printed(*size->diameter);
  if (size && is_known(size->diameter) && is_known(size->length)) words += " by " + base::printed(*size->length);
  if (size && is_known(size->thickness)) words += ", " + base::printed(*size->thickness) + " thick";
  return words + ". The bare seat decides.";
}

}  // namespace benchleaf::compose
