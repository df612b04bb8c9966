// In: a watch. Out: what is not known of it, each with how to find it out.
#include "ticket/questions.h"

namespace benchleaf::compose {

namespace {

/// Where a leak that is known to be young goes.
std::string young_way(const Planner& planner) {
  const std::string young = young_leak(planner);
  const auto clears = planner.desk.records.procedures.find("clear-alkaline-crust");
  if (young.empty() || clears == planner.desk.records.procedures.end()) return {};
  return " Of an " + young + ", by its receipt: with the job \"" + clears->second.title + "\".";
}

/// A crust that is known by its look alone: what it may be, and what it counts as until then.
PlanCheck crust_check(const Planner& planner) {
  std::vector<std::string> names;
  for (const std::string& residue : planner.residues()) names.push_back(planner.desk.name(residue));
  const model::Watch::Crust& crust = *planner.watch.crust;
  std::string how = sentence_case(plain_words(crust.colour)) + (crust.place.empty() ? "" : ", " + crust.place) + ": ";
  how += names.empty() ? "none on record looks so." : "it may be " + listed(names, " or ") + ".";
  return {"residues", "What the crust is",
          how + " Until it is known it counts as an old leak: gloves, a bag, nothing dry." + young_way(planner), true};
}

}  // namespace

void Planner::add_checks() {
  for (const Question& question : questions()) {
    if (question.known == nullptr || question.known(*this)) continue;
    plan.checks.push_back({question.field, question.what, question.how, question.back_off});
    if (plan.checks.back().field == "crust.colour") plan.checks.back().how += young_way(*this);
  }
  if (watch.crust && watch.residues.empty()) plan.checks.push_back(crust_check(*this));
}

}  // namespace benchleaf::compose
