// Rules about cautions among the steps: each that a step needs has been read before it, directly before where it is grave;
// one that no step needs says why it stands there.

#include <algorithm>
#include <set>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

#include "bench/step_checker.h"
#include "prove/checks.h"

namespace benchleaf::prove {
namespace {

using bench::CautionNeed;
using model::Caution;
using model::Procedure;
using report::Rule;
using Word = model::Message::Word;

constexpr int kStepsAhead = 1;  // a grave caution may guard the step before as well: what is lifted out there already has it

bool is_grave(const Caution& caution) { return caution.word == Word::danger || caution.word == Word::warning; }

std::string_view word_of(const Caution& caution) {
  switch (caution.word) {
    case Word::danger: return "danger";
    case Word::warning: return "warning";
    case Word::caution: return "caution";
    case Word::notice: break;
  }
  return "notice";
}

/// What the steps need in any of the bindings that the slots allow, in the order of the steps.
std::vector<CautionNeed> needs_of(const Proof& proof, const Procedure& procedure, const std::vector<bench::Binding>& bindings) {
  const bench::StepWorld world{proof.base, proof.tables};
  std::set<std::tuple<std::size_t, std::string, std::string>> seen;
  std::vector<CautionNeed> needs;
  for (const auto& binding : bindings) {
    for (CautionNeed& need : bench::caution_needs(world, bench::bound(procedure, binding))) {
      if (seen.insert({need.step, need.field, need.caution}).second) needs.push_back(std::move(need));
    }
  }
  std::stable_sort(needs.begin(), needs.end(),
                   [](const CautionNeed& one, const CautionNeed& other) { return one.step < other.step; });
  return needs;
}

class CautionWalk {
 public:
  CautionWalk(const Proof& proof, const Procedure& procedure, const std::vector<bench::Binding>& bindings)
      : proof_(proof),
        procedure_(procedure),
        head_(procedure.cautions.begin(), procedure.cautions.end()),
        needs_(needs_of(proof, procedure, bindings)) {}

  void walk() {
    for (const CautionNeed& need : needs_) check_need(need);
    for (std::size_t i = 0; i < procedure_.cautions.size(); ++i) check_head(i, procedure_.cautions[i]);
    for (std::size_t i = 0; i < procedure_.steps.size(); ++i) {
      const auto& item = procedure_.steps[i];
      if (!item.caution.empty() && item.whole && item.why.empty()) check_item(i, item.caution);
    }
  }

 private:
  bool stands_before(const model::RecordRef& caution, std::size_t step) const {
    for (std::size_t i = 0; i < step; ++i) {
      if (procedure_.steps[i].caution == caution) return true;
    }
    return false;
  }

  void check_need(const CautionNeed& need) {
    const Caution* caution = proof_.base.find<Caution>(need.caution);
    if (caution == nullptr ? proof_.base.known(need.caution) : !caution->usable("word")) return;
    const bool grave = caution == nullptr || is_grave(*caution);
    const bool in_head = head_.count(need.caution) > 0 && !grave;
    if (in_head || stands_before(need.caution, need.step) || !told_.insert(need.caution).second) return;
    const std::string word = caution == nullptr ? std::string("caution") : std::string(word_of(*caution));
    const std::string place = grave ? "as an item before this step" : "in the head or before this step";
    auto& finding = proof_.findings.add(
        Rule::caution_before_step, procedure_.span_of("steps." + std::to_string(need.step) + "." + need.field),
        need.because + ", whose " + word + " " + need.caution.id() + " has not been given: " + need.reason,
        "add caution: " + need.caution.id() + " " + place);
    for (std::size_t i = need.step; i < procedure_.steps.size(); ++i) {
      if (procedure_.steps[i].caution != need.caution) continue;
      finding.notes.push_back({procedure_.span_of("steps." + std::to_string(i) + ".caution"), "it stands here, after the step"});
      break;
    }
    const model::Record* record = proof_.base.find(need.record);
    if (record != nullptr) finding.notes.push_back({record->span_of(need.path), need.reason});
  }

  /// What stands in the head is asked for by a step: the head has no room for another reason.
  void check_head(std::size_t place, const model::RecordRef& caution) {
    const std::string path = "cautions." + std::to_string(place);
    const Caution* named = proof_.base.find<Caution>(caution);
    if (named == nullptr || !named->usable("word") || is_grave(*named) || !procedure_.usable(path) || some_step_is_unusable())
      return;
    const bool needed = std::any_of(needs_.begin(), needs_.end(), [&](const auto& need) { return need.caution == caution; });
    if (needed) return;
    proof_.findings.add(Rule::caution_extra, procedure_.span_of(path), "no step needs " + caution.id(),
                        "take it out, or set it as an item before its step with why:");
  }

  /// An item stands before the step that needs it: not steps ahead of it, and not for nothing.
  void check_item(std::size_t place, const model::RecordRef& caution) {
    const std::string path = "steps." + std::to_string(place) + ".caution";
    if (proof_.base.find<Caution>(caution) == nullptr || !procedure_.usable(path)) return;
    const CautionNeed* first = nullptr;
    for (const CautionNeed& need : needs_) {
      if (need.caution == caution && need.step > place) {
        first = &need;
        break;
      }
    }
    if (first == nullptr) {
      if (some_step_is_unusable()) return;
      proof_.findings.add(Rule::caution_extra, procedure_.span_of(path),
                          "no step after this place needs " + caution.id() + ", and the item does not say why it stands here",
                          "take it out, or add why:");
      return;
    }
    int between = 0;
    for (std::size_t i = place; i < first->step; ++i) between += procedure_.steps[i].caution.empty() ? 1 : 0;
    if (between <= kStepsAhead || !is_grave(*proof_.base.find<Caution>(caution))) return;
    auto& finding =
        proof_.findings.add(Rule::caution_early, procedure_.span_of(path),
                            caution.id() + " stands " + std::to_string(between) + " steps ahead of the first step that needs it",
                            "move it down to the step that needs it");
    finding.notes.push_back({procedure_.span_of("steps." + std::to_string(first->step) + "." + first->field), first->because});
  }

  /// What an unusable step needs is not known, so no item is called needless then.
  bool some_step_is_unusable() const {
    for (const auto& step : procedure_.steps) {
      if (!step.whole) return true;
    }
    return false;
  }

  const Proof& proof_;
  const Procedure& procedure_;
  std::set<std::string> head_;
  std::set<std::string> told_;
  std::vector<CautionNeed> needs_;
};

}  // namespace

void check_cautions_before_steps(const Proof& proof) {
  for (const auto& [id, procedure] : proof.base.procedures) {
    const auto bindings = bench::allowed_bindings(procedure);
    // too many to try are a finding of the steps; what they need is not known then
    if (!bindings.empty()) CautionWalk(proof, procedure, bindings).walk();
  }
}

}  // namespace benchleaf::prove
