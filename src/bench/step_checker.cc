// In: a procedure whose slots are filled. Out: what its steps break: liquids and abrasives on materials that they ruin or
// of which nothing is known, ways of working that a verdict or a part does not bear.
#include "bench/step_checker.h"

#include <algorithm>
#include <set>

#include "base/quantity.h"
#include "bench/compatibility.h"
#include "bench/ways.h"

namespace benchleaf::bench {

namespace {

using Step = model::Procedure::Step;

void fill(model::References& references, const Binding& binding) {
  for (model::RecordRef& reference : references) {
    if (reference.empty() || reference.text().front() != '$') continue;
    const auto filled = binding.find(std::string_view(reference).substr(1));
    if (filled != binding.end()) reference = filled->second;
  }
}

/// What a liquid of the step touches, and how it comes there.
struct Target {
  model::RecordRef reference;
  std::string field;
  std::string comes;  ///< `on`, `reaches`, `goes everywhere and is inside`
};

class MaterialCheck {
 public:
  MaterialCheck(const StepWorld& world, const model::Procedure& procedure, std::vector<StepFault>& faults)
      : world_(world), procedure_(procedure), faults_(faults) {}

  void run() {
    for (place_ = 0; place_ < procedure_.steps.size(); ++place_) {
      const Step& step = procedure_.steps[place_];
      if (!step.whole || !step.caution.empty()) continue;
      ways_ = ways_of(world_, step);
      for (std::size_t i = 0; i < step.with.size(); ++i) check_agent(step, step.with[i], "with." + std::to_string(i));
      check_parts(step);
    }
  }

 private:
  void check_agent(const Step& step, const model::RecordRef& agent, const std::string& field) {
    if (chemistry_named(world_, agent) == nullptr && abrasive_named(world_, agent) == nullptr) return;
    std::set<std::string> told;
    for (const Target& target : targets_of(step, agent)) {
      for (const model::RecordRef& material : materials_of(world_, target.reference)) {
        if (told.insert(target.reference + " " + material).second) judge(step, agent, field, target, material);
      }
    }
  }

  std::vector<Target> targets_of(const Step& step, const model::RecordRef& agent) const {
    std::vector<Target> targets;
    bool seam = false;
    for (std::size_t i = 0; i < step.on.size(); ++i) {
      targets.push_back({step.on[i], "on." + std::to_string(i), ""});
      const model::Part* part = part_named(world_, step.on[i]);
      if (part != nullptr && part->seam) seam = true;
    }
    for (std::size_t i = 0; i < step.reaches.size(); ++i)
      targets.push_back({step.reaches[i], "reaches." + std::to_string(i), ", which it reaches"});
    const std::string way = inside_way(step, agent, seam);
    if (way.empty()) return targets;
    for (const model::RecordRef& inside : procedure_.inside) targets.push_back({inside, "with", way});
    return targets;
  }

  /// How the liquid comes to what is inside, or empty where it does not.
  std::string inside_way(const Step& step, const model::RecordRef& agent, bool seam) const {
    const model::Chemistry* liquid = chemistry_named(world_, agent);
    if (liquid == nullptr || (liquid->form != model::LiquidForm::liquid && liquid->form != model::LiquidForm::aerosol)) return {};
    if (floods(ways_)) return ", which is inside, and the liquid goes everywhere";
    if (seam) return ", which is inside, and the liquid creeps through the seam";
    return step.reaches.empty() ? ", which is inside, and the step does not say what the liquid reaches" : std::string();
  }

  /// `isopropyl alcohol on polariser of the display (polariser film)`
  std::string pair_words(const model::RecordRef& agent, const Target& target, const model::RecordRef& material) const {
    std::string words = words_for(world_, agent) + " on " + words_for(world_, target.reference);
    if (material != target.reference) words += " (" + words_for(world_, material) + ")";
    return words + target.comes;
  }

  void judge(const Step& step, const model::RecordRef& agent, const std::string& field, const Target& target,
             const model::RecordRef& material) {
    const Compatibility found = compatibility(world_, agent, material);
    if (!found.readable || world_.base.find(material) == nullptr) return;
    const std::string pair = pair_words(agent, target, material);
    if (found.effect == Effect::never) {
      const std::string why = found.row->why.empty() ? std::string("no reason is stated") : found.row->why;
      const bool liquid = agent.is(model::Kind::chemistry);
      add(StepLaw::never, field, pair + " is never: " + why,
          liquid ? "take another liquid, or keep it away and say what it reaches"
                 : "take another abrasive or none, or keep it away and say what it reaches",
          found);
    } else if (found.effect == Effect::not_known) {
      add(StepLaw::not_known, field, pair + " is not known: " + found.agent->reference() + " says nothing about it",
          "state the pair in on-materials of " + found.agent->reference() + ", with its source", found);
    } else {
      check_limits(step, field, pair, found);
    }
  }

  void check_limits(const Step& step, const std::string& field, const std::string& pair, const Compatibility& found) {
    std::vector<std::string> allowed = found.row->how;
    if (allowed.empty() && found.effect == Effect::with_care) allowed = {"wipe"};
    const std::string condition = found.row->condition.empty() ? std::string("with care means a wipe") : found.row->condition;
    if (!allowed.empty()) {
      for (const char* way : {"soak", "bath", "tank", "pour", "spray"}) {
        if (ways_.count(way) == 0 || std::find(allowed.begin(), allowed.end(), way) != allowed.end()) continue;
        add(StepLaw::limits, field, pair + " is with care, and not by " + way + ": " + condition,
            "wipe it on, or keep this part out", found);
      }
    }
    if (!step.at || !found.row->at_most) return;
    const auto now = step.at->in(base::Unit::degree_celsius);
    const auto most = found.row->at_most->in(base::Unit::degree_celsius);
    if (!now || !most || now->high <= most->high) return;
    add(StepLaw::limits, "at",
        pair + " holds up to " + base::terminal(*found.row->at_most) + ", and the step is at " + base::terminal(*step.at),
        "work cooler", found);
  }

  void check_parts(const Step& step) {
    for (std::size_t i = 0; i < step.on.size(); ++i) check_part(step.on[i], "on." + std::to_string(i));
    for (std::size_t i = 0; i < step.reaches.size(); ++i) check_part(step.reaches[i], "reaches." + std::to_string(i));
    if (!floods(ways_) && ways_.count("heat") == 0) return;
    for (const model::RecordRef& inside : procedure_.inside) check_part(inside, "do");
  }

  void check_part(const model::RecordRef& reference, const std::string& field) {
    const model::Part* part = part_named(world_, reference);
    if (part == nullptr) return;
    for (std::size_t i = 0; i < part->limits.size(); ++i) {
      const auto& limit = part->limits[i];
      const std::string path = "limits." + std::to_string(i);
      if (ways_.count(limit.never) == 0 || !part->usable(path)) continue;
      faults_.push_back({StepLaw::part, place_, field,
                         words_for(world_, reference) + " does not bear " + limit.never + ": " + limit.why,
                         "leave it out of this step, or work in another way", ground_of(*part, path), part->reference(), path});
    }
  }

  void add(StepLaw law, const std::string& field, std::string message, std::string hint, const Compatibility& found) {
    const std::string path = found.path.empty() ? "on-materials" : found.path;
    const std::string ground = found.row == nullptr ? "no line" : ground_of(*found.agent, path);
    faults_.push_back({law, place_, field, std::move(message), std::move(hint), ground, found.agent->reference(), path});
  }

  const StepWorld& world_;
  const model::Procedure& procedure_;
  std::vector<StepFault>& faults_;
  std::size_t place_ = 0;
  std::set<std::string, std::less<>> ways_;
};

}  // namespace

std::vector<Binding> allowed_bindings(const model::Procedure& procedure) {
  std::vector<Binding> bindings{{}};
  for (const auto& slot : procedure.slots) {
    if (slot.allowed.empty()) continue;
    if (bindings.size() * slot.allowed.size() > kMostBindings) return {};
    std::vector<Binding> longer;
    for (const Binding& binding : bindings) {
      for (const model::RecordRef& record : slot.allowed) {
        longer.push_back(binding);
        longer.back()[slot.name] = record;
      }
    }
    bindings = std::move(longer);
  }
  return bindings;
}

model::Procedure bound(const model::Procedure& procedure, const Binding& binding) {
  model::Procedure filled = procedure;
  fill(filled.inside, binding);
  for (Step& step : filled.steps) {
    for (auto* list : {&step.on, &step.with, &step.reaches, &step.meets}) fill(*list, binding);
  }
  return filled;
}

void check_materials(const StepWorld& world, const model::Procedure& procedure, std::vector<StepFault>& faults) {
  MaterialCheck(world, procedure, faults).run();
}

std::vector<StepFault> check_steps(const StepWorld& world, const model::Procedure& bound_procedure) {
  std::vector<StepFault> faults;
  check_materials(world, bound_procedure, faults);
  check_heat(world, bound_procedure, faults);
  check_wet_method(world, bound_procedure, faults);
  check_mixing(world, bound_procedure, faults);
  std::stable_sort(faults.begin(), faults.end(),
                   [](const StepFault& one, const StepFault& other) { return one.step < other.step; });
  return faults;
}

}  // namespace benchleaf::bench
