// In: a watch. Out: what is not known of it, each with how to find it out.
#include "compose/ticket/questions.h"

namespace benchleaf::compose {

namespace {

/// A crust that is known by its look alone: what it may be, and what it counts as until then.
PlanCheck crust_check(const Planner& planner) {
  std::vector<std::string> names;
  for (const std::string& residue : planner.residues()) names.push_back(planner.desk.name(residue));
  const model::Watch::Crust& crust = *planner.watch.crust;
  std::string how = sentence_case(plain_words(crust.colour)) + (crust.place.empty() ? "" : ", " + crust.place) + ": ";
  how += names.empty() ? "none on record looks so." : "it may be " + listed(names, " or ") + ".";
  return {"residues", "What the crust is", how + " Until it is known it counts as an old leak: gloves, a bag, nothing dry."};
}

}  // namespace

void Planner::add_checks() {
  for (const Question& question : questions()) {
    if (question.known != nullptr && !question.known(*this)) plan.checks.push_back({question.field, question.what, question.how});
  }
  if (watch.crust && watch.residues.empty()) plan.checks.push_back(crust_check(*this));
}

}  // namespace benchleaf::compose
