// Rules about what tickets are planned by: conditions that can hold, jobs that can be reached, an order without a circle, short
// forms that leave no caution out.

#include <algorithm>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "prove/plan_checks.h"
#include "prove/shared.h"

namespace benchleaf::prove {
namespace {

using model::Condition;
using model::Mark;
using model::RecordRef;
using report::Rule;

/// A list of conditions of one record.
struct Listed {
  const model::Record& record;
  const char* field;
  const std::vector<Condition>& conditions;
};

std::vector<Listed> all_conditions(const Proof& proof) {
  std::vector<Listed> all;
  for (const auto& [id, job] : proof.base.jobs) {
    all.push_back({job, "usual", job.usual});
    all.push_back({job, "only", job.only});
  }
  for (const auto& [id, hold] : proof.base.holds) all.push_back({hold, "when", hold.when});
  for (const auto& [id, question] : proof.base.questions) all.push_back({question, "open", question.open});
  for (const auto& [id, look] : proof.base.looks) all.push_back({look, "when", look.when});
  return all;
}

bool asks(const Condition& condition, Mark mark) {
  return std::any_of(condition.traits.begin(), condition.traits.end(),
                     [mark](const auto& asked) { return asked.any_of.size() == 1 && asked.any_of.front() == mark; });
}

/// Pairs of marks that no watch bears together, whatever else is known of it.
constexpr std::pair<Mark, Mark> kApart[] = {{Mark::display_hands, Mark::lamp_unknown},
                                            {Mark::display_led, Mark::lamp_none},
                                            {Mark::display_led, Mark::lamp_unknown},
                                            {Mark::cell_found, Mark::lacks_cell},
                                            {Mark::cell_found, Mark::system_unknown},
                                            {Mark::cell_measured, Mark::lacks_cell},
                                            {Mark::leak_none, Mark::lacks_crust},
                                            {Mark::leak_old, Mark::lacks_crust},
                                            {Mark::leak_lithium, Mark::lacks_crust},
                                            {Mark::leak_young_alkaline, Mark::lacks_crust},
                                            {Mark::leak_young_silver, Mark::lacks_crust},
                                            {Mark::leak_lithium_or_other, Mark::lacks_crust},
                                            {Mark::crystal_acrylic, Mark::lacks_crystal},
                                            {Mark::crystal_glass, Mark::lacks_crystal},
                                            {Mark::crystal_acrylic, Mark::polish_on_glass},
                                            {Mark::crystal_glass, Mark::polish_possible},
                                            {Mark::crystal_glass, Mark::polish_too_thin},
                                            {Mark::crystal_glass, Mark::polish_unmeasured},
                                            {Mark::crystal_glass, Mark::polish_no_paper},
                                            {Mark::gasket_known, Mark::lacks_gasket},
                                            {Mark::seat_known, Mark::lacks_seat},
                                            {Mark::back_snap, Mark::lacks_back},
                                            {Mark::back_screwed, Mark::lacks_back},
                                            {Mark::back_four_screws, Mark::lacks_back},
                                            {Mark::back_none, Mark::lacks_back},
                                            {Mark::jobs_named, Mark::lacks_jobs},
                                            {Mark::lume_some, Mark::lacks_lume},
                                            {Mark::lume_none, Mark::lacks_lume},
                                            {Mark::pushers_working, Mark::pushers_stuck},
                                            {Mark::pushers_working, Mark::pushers_missing}};

/// Why a condition never holds, or empty.
std::string never_holds(const Proof& proof, const Condition& condition) {
  for (const auto& [one, other] : kApart) {
    if (!asks(condition, one) || !asks(condition, other)) continue;
    return std::string(model::mark_trait(one)) + " " + std::string(model::mark_word(one)) + " and " +
           std::string(model::mark_trait(other)) + " " + std::string(model::mark_word(other)) + " are never true of one watch";
  }
  const bool no_surface = asks(condition, Mark::lacks_surface) && !condition.surface.empty();
  if (no_surface) return "a watch that lacks its surface has none of these surfaces";
  for (const RecordRef& symptom : condition.symptom) {
    if (asks(condition, Mark::lacks_symptoms)) return "a watch without symptoms has not " + symptom;
  }
  for (const RecordRef& residue : condition.residue) {
    if (proof.base.find(residue) != nullptr && asks(condition, Mark::lacks_crust))
      return "a watch without a crust has not " + residue;
  }
  return {};
}

/// Whether the causes of a symptom name a procedure.
bool is_cure(const Proof& proof, const RecordRef& procedure) {
  return std::any_of(proof.base.symptoms.begin(), proof.base.symptoms.end(), [&procedure](const auto& one) {
    const auto& causes = one.second.causes;
    return std::any_of(causes.begin(), causes.end(), [&procedure](const auto& cause) { return cause.procedure == procedure; });
  });
}

bool is_all_dead(const Proof& proof, const std::vector<Condition>& conditions) {
  return std::all_of(conditions.begin(), conditions.end(),
                     [&proof](const Condition& one) { return !never_holds(proof, one).empty(); });
}

/// What must be done before a job, through all jobs between.
bool comes_before_itself(const Proof& proof, const RecordRef& procedure) {
  std::vector<RecordRef> open = {procedure};
  std::set<RecordRef> seen;
  while (!open.empty()) {
    const RecordRef now = open.back();
    open.pop_back();
    for (const auto& [id, job] : proof.base.jobs) {
      if (job.procedure != now) continue;
      for (const RecordRef& before : job.after) {
        if (before == procedure) return true;
        if (seen.insert(before).second) open.push_back(before);
      }
    }
  }
  return false;
}

/// The cautions of a procedure, in its head and before its steps, each once.
std::vector<RecordRef> cautions_of(const model::Procedure& procedure) {
  std::vector<RecordRef> all = procedure.cautions;
  for (const auto& step : procedure.steps) {
    if (!step.caution.empty()) all.push_back(step.caution);
  }
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

constexpr std::string_view kSlots[] = {"seat",  "groove", "left",       "state",      "healthy",
                                       "reset", "year",   "opens-back", "closes-back"};

/// The first slot of a text that no plan fills, or empty. A slot may be a procedure, for its job on the ticket.
std::string unknown_slot(const Proof& proof, const std::string& text) {
  for (std::size_t open = text.find('{'); open != std::string::npos; open = text.find('{', open + 1)) {
    const std::size_t close = text.find('}', open);
    if (close == std::string::npos) return text.substr(open);
    const std::string slot = text.substr(open + 1, close - open - 1);
    const bool known = std::find(std::begin(kSlots), std::end(kSlots), slot) != std::end(kSlots);
    if (!known && proof.base.find<model::Procedure>(RecordRef(slot)) == nullptr) return slot;
  }
  return {};
}

}  // namespace

void check_plan_conditions(const Proof& proof) {
  for (const Listed& listed : all_conditions(proof)) {
    for (std::size_t i = 0; i < listed.conditions.size(); ++i) {
      const std::string path = std::string(listed.field) + "." + std::to_string(i);
      const std::string why = never_holds(proof, listed.conditions[i]);
      if (why.empty() || !listed.record.usable(path)) continue;
      proof.findings.add(Rule::plan_condition, listed.record.span_of(path), "this condition never holds: " + why,
                         "take one of the two out");
    }
  }
}

void check_jobs_are_reached(const Proof& proof) {
  for (const auto& [id, job] : proof.base.jobs) {
    const bool usual = !job.usual.empty() && !is_all_dead(proof, job.usual);
    if (usual || job.on_request || is_cure(proof, job.procedure) || !job.usable("usual")) continue;
    proof.findings.add(Rule::plan_reach, job.span_of("procedure"), "no watch can reach this job: nothing plans " + job.procedure,
                       "add `usual:`, name the procedure in a cause of a symptom, or say `on-request: true`");
  }
}

void check_questions_are_asked(const Proof& proof) {
  std::set<std::string> fields;
  for (const auto& [id, question] : proof.base.questions) {
    if (!question.open.empty() && is_all_dead(proof, question.open))
      proof.findings.add(Rule::plan_question, question.span_of("open"),
                         "nothing asks this question: none of its conditions ever holds",
                         "mend the conditions, or leave `open:` out for the form alone");
    if (!question.field.empty() && !fields.insert(question.field).second)
      proof.findings.add(Rule::plan_question, question.span_of("field"), "another question fills " + question.field + " already",
                         "leave one of the two out");
  }
}

void check_job_order(const Proof& proof) {
  for (const auto& [id, job] : proof.base.jobs) {
    if (job.after.empty() || !comes_before_itself(proof, job.procedure)) continue;
    proof.findings.add(Rule::plan_order, job.span_of("after"), job.procedure + " would come before itself",
                       "take the procedure out of `after:` in one of the jobs of the circle");
  }
}

void check_briefs(const Proof& proof) {
  for (const auto& [id, job] : proof.base.jobs) {
    const auto* procedure = proof.base.find<model::Procedure>(job.procedure);
    if (job.brief.empty() || procedure == nullptr) continue;
    for (const RecordRef& caution : cautions_of(*procedure)) {
      const bool said =
          std::any_of(job.brief.begin(), job.brief.end(), [&caution](const auto& one) { return one.caution == caution; });
      if (said) continue;
      proof.findings.add(Rule::plan_brief, job.span_of("brief"),
                         "the short form leaves " + caution + " out, which " + job.procedure + " has",
                         "put the caution before the step that it guards");
    }
  }
}

void check_look_slots(const Proof& proof) {
  for (const auto& [id, look] : proof.base.looks) {
    for (const auto& [field, text] : {std::pair{"text", &look.text}, {"healthy", &look.healthy}}) {
      const std::string slot = unknown_slot(proof, *text);
      if (slot.empty()) continue;
      proof.findings.add(Rule::plan_slot, look.span_of(field), "no plan fills the slot {" + slot + "}",
                         "use one of {seat}, {groove}, {left}, {state}, {healthy}, {reset}, {year}, {opens-back}, {closes-back}, "
                         "{procedure/ID}");
    }
  }
}

}  // namespace benchleaf::prove
