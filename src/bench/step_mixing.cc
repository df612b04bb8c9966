// In: a procedure whose slots are filled. Out: liquids and residues that meet and must not, or not without a rinse between;
// acids and lyes that nothing rinses off.
#include <algorithm>
#include <map>
#include <set>

#include "bench/mixing.h"
#include "bench/step_checker.h"

namespace benchleaf::bench {

namespace {

using Step = model::Procedure::Step;

/// Something that lies on a part since an earlier step.
struct Presence {
  model::RecordRef reference;
  std::size_t step = 0;
  std::string field;
};

bool goes_on_working(std::optional<model::LiquidFamily> family) {
  using Family = model::LiquidFamily;
  return family == Family::acid || family == Family::base || family == Family::oxidiser || family == Family::cleaner;
}

class MixingCheck {
 public:
  MixingCheck(const StepWorld& world, const model::Procedure& procedure, std::vector<StepFault>& faults)
      : world_(world), procedure_(procedure), faults_(faults) {}

  void run() {
    for (place_ = 0; place_ < procedure_.steps.size(); ++place_) {
      const Step& step = procedure_.steps[place_];
      if (!step.whole || !step.caution.empty()) continue;
      check_groups(step);
      check_within(step);
      check_against_earlier(step);
      move_on(step);
    }
    check_left();
  }

 private:
  static model::References places_of(const Step& step) {
    model::References places = step.on;
    places.insert(places.end(), step.reaches.begin(), step.reaches.end());
    if (places.empty()) places.emplace_back();  // on the bench
    return places;
  }

  void check_groups(const Step& step) {
    for (const auto* list : {&step.with, &step.meets}) {
      const std::string field = list == &step.with ? "with." : "meets.";
      for (std::size_t i = 0; i < list->size(); ++i) {
        for (const model::RecordRef& substance : ungrouped(world_, (*list)[i])) {
          if (!told_.insert(substance).second) continue;
          faults_.push_back({StepLaw::mix_group,
                             place_,
                             field + std::to_string(i),
                             words_for(world_, (*list)[i]) + " holds " + words_for(world_, substance) +
                                 ", which stands in no reactive group: what it must not meet is not known",
                             "put it into a group of table reactive-groups",
                             "table reactive-groups",
                             {},
                             {}});
        }
      }
    }
  }

  void check_within(const Step& step) {
    for (std::size_t i = 0; i < step.with.size(); ++i) {
      const std::string field = "with." + std::to_string(i);
      for (std::size_t j = i + 1; j < step.with.size(); ++j)
        judge(step.with[i], step.with[j], "with." + std::to_string(j), " in one step", step.closed, Meet::rinse);
      for (const model::RecordRef& met : step.meets) {
        const bool liquid = chemistry_named(world_, met) != nullptr;
        judge(met, step.with[i], field, ", which the step meets", step.closed, liquid ? Meet::rinse : Meet::never);
      }
    }
  }

  void check_against_earlier(const Step& step) {
    for (std::size_t i = 0; i < step.with.size(); ++i) {
      std::set<model::RecordRef> seen(step.meets.begin(), step.meets.end());
      for (const model::RecordRef& place : places_of(step)) {
        for (const Presence& earlier : lying_[place]) {
          if (!seen.insert(earlier.reference).second || earlier.reference == step.with[i]) continue;
          const bool residue = residue_named(world_, earlier.reference) != nullptr;
          judge(earlier.reference, step.with[i], "with." + std::to_string(i),
                " from step " + number_of(earlier.step) + ", with no rinse between", step.closed,
                residue ? Meet::never : Meet::rinse);
        }
      }
    }
  }

  /// The number that the reader sees: cautions are not counted.
  std::string number_of(std::size_t place) const {
    int number = 0;
    for (std::size_t i = 0; i <= place; ++i) number += procedure_.steps[i].caution.empty() ? 1 : 0;
    return std::to_string(number);
  }

  void judge(const model::RecordRef& earlier, const model::RecordRef& now, const std::string& field, const std::string& comes,
             bool closed, Meet from) {
    const std::vector<MixVerdict> known = mixes(world_, earlier, now);
    MixVerdict verdict = gravest(known, false);
    StepLaw law = verdict.open == Meet::never ? StepLaw::mix_never : StepLaw::mix_rinse;
    if (verdict.open < from) {
      verdict = gravest(known, true);
      if (!closed || !verdict.closed_never) return;
      law = StepLaw::mix_closed;
    }
    if (!told_.insert(std::to_string(place_) + earlier + now).second) return;
    std::string message = words_for(world_, now) + " on " + words_for(world_, earlier) + comes;
    if (law == StepLaw::mix_closed) message += ", in a closed vessel";
    if (!verdict.product.empty()) message += ", gives " + verdict.product;
    message += ": " + verdict.effect;
    const char* hint = law == StepLaw::mix_closed  ? "work in the open"
                       : law == StepLaw::mix_rinse ? "put a step with rinse: true between"
                                                   : "take one of the two out, or rinse in a step of its own between them";
    faults_.push_back({law, place_, field, std::move(message), hint, verdict.ground, verdict.record, verdict.path});
  }

  void move_on(const Step& step) {
    for (const model::RecordRef& place : places_of(step)) {
      auto& lying = lying_[place];
      if (step.rinse) {
        lying.erase(std::remove_if(lying.begin(), lying.end(), [this](const Presence& one) { return !stays(one.reference); }),
                    lying.end());
      }
      for (std::size_t i = 0; i < step.with.size(); ++i) {
        const model::Chemistry* liquid = chemistry_named(world_, step.with[i]);
        if (liquid != nullptr && !(step.rinse && liquid->family == model::LiquidFamily::water))
          lying.push_back({step.with[i], place_, "with." + std::to_string(i)});
      }
      for (std::size_t i = 0; i < step.meets.size(); ++i) {
        if (!step.rinse || stays(step.meets[i])) lying.push_back({step.meets[i], place_, "meets." + std::to_string(i)});
      }
    }
  }

  bool stays(const model::RecordRef& reference) const {
    const model::Residue* residue = residue_named(world_, reference);
    return residue != nullptr && residue->stays;
  }

  void check_left() {
    std::set<std::string> told;
    for (const auto& [place, lying] : lying_) {
      for (const Presence& one : lying) {
        const model::Chemistry* liquid = chemistry_named(world_, one.reference);
        if (liquid == nullptr || !goes_on_working(liquid->family)) continue;
        if (!told.insert(one.reference + std::to_string(one.step)).second) continue;
        const std::string where = place.empty() ? std::string("the work") : words_for(world_, place);
        faults_.push_back({StepLaw::mix_left, one.step, one.field,
                           words_for(world_, one.reference) + " is left on " + where + ": it goes on working after the last step",
                           "add a step with rinse: true on the same parts", ground_of(*liquid, "kind"), liquid->reference(),
                           "kind"});
      }
    }
  }

  const StepWorld& world_;
  const model::Procedure& procedure_;
  std::vector<StepFault>& faults_;
  std::map<model::RecordRef, std::vector<Presence>> lying_;
  std::set<std::string> told_;
  std::size_t place_ = 0;
};

}  // namespace

void check_mixing(const StepWorld& world, const model::Procedure& procedure, std::vector<StepFault>& faults) {
  MixingCheck(world, procedure, faults).run();
}

}  // namespace benchleaf::bench
