// In: residue=, mass=, liquid=, strength=. Out: how much of the liquid turns the residue into a salt, in swabs first, and the
// gas that comes of it. A residue of several substances in unknown shares is reckoned for each; the ends are theirs.

#include "bench/crust_dose.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "base/id.h"
#include "base/quantity.h"
#include "bench/calculation.h"
#include "bench/print_rule.h"
#include "bench/solution_strength.h"
#include "model/record_ref.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "crust-dose";
constexpr std::string_view kVolume = "V = m n / (M c): mass by molar mass, times equivalents, by the moles a litre neutralises";
constexpr Plausible kMass{0.01, 100000};   // mg
constexpr Plausible kStrength{0.01, 100};  // % w/v
constexpr double kGramsPerLitre = 10;      // of 1 % w/v
constexpr double kPercent = 100;
constexpr double kMillimolesPerMilligram = 1;  // mg by g/mol is mmol, and mmol by mol/L is mL

/// Printed as the volume of the answer is.
std::string dose(double millilitres) {
  const OutputInfo* rule = print_rule(kName, "volume");
  return rule == nullptr ? std::string() : base::printed(figure(*rule, millilitres), Unit::millilitre);
}

/// A substance that the liquid can answer.
struct Part {
  std::string substance;
  Amount need;  ///< mmol of acid or base for a milligram
  Amount gas;   ///< mmol of gas from a milligram
};

class Dose {
 public:
  Dose(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    residue_ = ask_.record("residue", {"residue", "substance"});
    liquid_ = ask_.record("liquid", {"chemistry", "substance"});
    const Amount mass = ask_.amount("mass", Unit::milligram, kMass);
    if (ask_.failed()) return;
    refuse_never();
    refuse_unanswered();
    find_agent();
    find_parts();
    const Amount swab = ask_.row("bench-rules", "swab", "value", Unit::millilitre);
    const Amount molar_volume = ask_.row("physical-constants", "molar-volume", "value", Unit::litre_per_mole);
    if (ask_.failed()) return;
    warnings();
    Amount need = span_of(&Part::need);
    const Amount volume = mass * need / per_millilitre_;
    answer_.formula(std::string(kVolume), "stoichiometry; equivalents and molar masses as the records state them",
                    model::Trust::handbook);
    const Amount swabs = volume / swab;
    Output& first = answer_.count("swabs", swabs, "swab");
    first.printed += swabs.has_ends ? ", rounded up" : " (" + dose(volume.nominal) + ", rounded up)";
    answer_.put("volume", volume, Unit::millilitre);
    const Amount gas = mass * span_of(&Part::gas) * molar_volume;
    if (gas.high > 0) {
      answer_.formula("gas = m k / M x molar volume, k moles of gas from one of the substance", "ideal gas, 20 °C, 101.325 kPa",
                      model::Trust::handbook);
      answer_.put("gas", gas, Unit::millilitre);
    }
    working(mass, volume, swab);
  }

 private:
  /// Two records that must not meet are not reckoned.
  void refuse_never() {
    const auto substances = [this](const std::string& record) {
      std::vector<std::string> list = {record};
      for (const auto& part : parts_of(record)) list.push_back(part);
      return list;
    };
    const auto forbids = [this](const std::string& record, const std::vector<std::string>& others) {
      for (int i = 0;; ++i) {
        const std::string path = "meets." + std::to_string(i);
        const std::string with = ask_.word(record, path + ".with");
        if (with.empty()) return;
        const bool meets = std::find(others.begin(), others.end(), with) != others.end();
        if (meets && ask_.word(record, path + ".verdict") == "never")
          ask_.fail("liquid", ask_.title(record) + " must never meet it");
      }
    };
    forbids(residue_, substances(liquid_));
    forbids(liquid_, substances(residue_));
  }

  /// A residue whose record names what answers it is answered by that alone: old mercury by water.
  void refuse_unanswered() {
    std::vector<std::string> answers;
    for (int i = 0;; ++i) {
      const std::string one = ask_.word(residue_, "answers." + std::to_string(i));
      if (one.empty()) break;
      answers.push_back(one);
    }
    if (answers.empty() || !model::RecordRef(liquid_).is(model::Kind::chemistry)) return;
    if (std::find(answers.begin(), answers.end(), liquid_) != answers.end()) return;
    std::vector<std::string> names;
    for (const auto& one : answers) names.push_back(ask_.title(one));
    ask_.fail("liquid", ask_.title(residue_) + " is not answered by " + ask_.title(liquid_),
              "its record names " + base::or_list(names));
  }

  std::vector<std::string> parts_of(const std::string& record) const {
    std::vector<std::string> parts;
    for (int i = 0;; ++i) {
      const std::string part = ask_.word(record, "made-of." + std::to_string(i) + ".substance");
      if (part.empty()) return parts;
      parts.push_back(part);
    }
  }

  bool is_acid(const std::string& substance) const { return ask_.word(substance, "acts-as") == "acid"; }
  bool is_base(const std::string& substance) const { return ask_.word(substance, "acts-as") == "base"; }

  /// What in the liquid does the work, and how many moles of it a litre holds.
  void find_agent() {
    std::vector<std::string> parts = parts_of(liquid_);
    if (parts.empty()) parts.push_back(liquid_);
    std::size_t place = 0;
    while (place < parts.size() && !is_acid(parts[place]) && !is_base(parts[place])) ++place;
    if (place == parts.size()) {
      ask_.fail("liquid", ask_.title(liquid_) + " is no acid and no base: it dissolves and carries away, it neutralises nothing");
      return;
    }
    agent_ = parts[place];
    strength_ = strength("made-of." + std::to_string(place) + ".strength");
    const Amount molar_mass = ask_.needed("liquid", agent_, "molar-mass", Unit::gram_per_mole);
    const Amount equivalents = ask_.needed("liquid", agent_, "equivalents", Unit::one);
    per_millilitre_ = strength_ * exactly(kGramsPerLitre) / molar_mass * equivalents;
  }

  Amount strength(const std::string& path) {
    if (ask_.has("strength")) return typed_strength();
    if (auto stated = ask_.stated(liquid_, path, Unit::percent_mass_by_volume)) return *stated;
    const auto by_mass = ask_.stated(liquid_, path, Unit::percent_by_mass);
    const auto density = ask_.stated(liquid_, "density", Unit::gram_per_millilitre);
    if (by_mass && density) return *by_mass * *density;
    const auto grams = by_mass ? grams_in_millilitre(ask_, {*by_mass, Unit::percent_by_mass}, agent_) : std::nullopt;
    if (grams) return *grams * exactly(kPercent);
    if (by_mass) {
      answer_.holds("The strength is by mass and the density is not stated: it is taken as that of water.");
      return *by_mass;
    }
    ask_.fail("strength", ask_.title(liquid_) + " does not state its strength: read the label");
    return exactly(1);
  }

  /// As the label has it, in mass in volume.
  Amount typed_strength() {
    const auto typed = read_strength(ask_, "strength", kStrength);
    if (!typed) return exactly(1);
    const auto grams = grams_in_millilitre(ask_, *typed, agent_);
    if (!grams) {
      ask_.fail("strength", "cannot be turned into mass in volume: no density of " + ask_.title(agent_) + " so strong is on file",
                "give it as % w/v");
      return exactly(1);
    }
    if (typed->unit == Unit::percent_mass_by_volume) return typed->amount;
    answer_.step(shown(typed->amount, typed->unit) + " of " + ask_.title(agent_) + " is " +
                 shown(kPercent * grams->nominal, 2, Unit::percent_mass_by_volume));
    return *grams * exactly(kPercent);
  }

  void find_parts() {
    if (ask_.failed()) return;
    std::vector<std::string> substances = parts_of(residue_);
    if (substances.empty()) substances.push_back(residue_);
    for (const auto& substance : substances) {
      const bool answered = is_acid(agent_) ? is_base(substance) : is_acid(substance);
      const auto molar_mass = ask_.stated(substance, "molar-mass", Unit::gram_per_mole);
      const auto equivalents = ask_.stated(substance, "equivalents", Unit::one);
      if (!answered || !molar_mass || !equivalents) continue;
      const Amount gas = ask_.stated(substance, "gas.moles", Unit::one).value_or(exactly(0));
      const Amount one = exactly(kMillimolesPerMilligram);
      parts_.push_back({substance, *equivalents * one / *molar_mass, gas * one / *molar_mass});
    }
    if (!parts_.empty()) return;
    const bool none_acts = std::none_of(substances.begin(), substances.end(), [this](const std::string& substance) {
      return is_acid(substance) || is_base(substance);
    });
    const std::string pair = ask_.title(liquid_) + " does not neutralise " + ask_.title(residue_);
    ask_.fail("liquid", pair + (none_acts ? ": it counts as neither acid nor base" : ": both are on the same side"),
              none_acts ? "lift it with a swab damp with water, as its procedure says" : "");
  }

  /// From the part that needs least to the one that needs most; the nominal is that of the first, which the record names
  /// first because there is most of it.
  Amount span_of(Amount Part::*figure) const {
    std::vector<Amount> all;
    for (const auto& part : parts_) all.push_back(part.*figure);
    Amount span = detail::resting_on(all);
    span.nominal = all.front().nominal;
    span.low = all.front().low;
    span.high = all.front().high;
    for (const auto& one : all) {
      detail::widen(span, one.low);
      detail::widen(span, one.high);
    }
    span.has_ends = span.low < span.high;
    return span;
  }

  void warnings() {
    if (is_acid(agent_)) {
      answer_.beware(ask_.caution("crust-dose crust"));
      answer_.beware(ask_.caution("crust-dose mercury"));
    }
    answer_.beware(ask_.caution("crust-dose person"));
    const bool fizzes = std::any_of(parts_.begin(), parts_.end(), [](const Part& part) { return part.gas.high > 0; });
    if (fizzes) answer_.beware(ask_.caution("crust-dose gas"));
    answer_.caution("",
                    "The dose is what the crust takes up, not what to pour: swab by swab until it stops fizzing, then rinse.");
    answer_.caution("",
                    "Where it just ceases to fizz a little of the agent is left over: wipe three times with distilled water.");
  }

  void working(const Amount& mass, const Amount& volume, const Amount& swab) {
    answer_.step(ask_.title(liquid_) + ": " + shown(strength_, Unit::percent_mass_by_volume) + " of " + ask_.title(agent_) +
                 ", " + shown(per_millilitre_.nominal, 4, Unit::mole_per_litre) + " that neutralise");
    for (const auto& part : parts_) {
      answer_.step(ask_.title(part.substance) + ": " +
                   shown(part.need.nominal * mass.nominal / per_millilitre_.nominal, 4, Unit::millilitre) + " for " +
                   shown(mass, Unit::milligram));
    }
    answer_.step("swabs: " + dose(volume.nominal) + " by " + shown(swab, Unit::millilitre) + " a swab, rounded up");
    answer_.holds("Holds while the whole mass is the substance named, and the label of the liquid is right.");
    if (parts_.size() > 1) answer_.holds("The shares of the crust are not known: the ends are those of one part alone.");
    answer_.nominal_only(volume, "mass and strength");
  }

  Ask& ask_;
  Answer& answer_;
  std::string residue_, liquid_, agent_;
  Amount strength_, per_millilitre_;
  std::vector<Part> parts_;
};

Result crust_dose(const Inputs& inputs, const Context& context) {
  return calculate<Dose>(crust_dose_calculator(), inputs, context);
}

}  // namespace

Calculator crust_dose_calculator() {
  return {kName,
          "how much of a weak acid or base a crust takes, in swabs",
          {{"residue", "a residue or substance of the handbook", "potassium-carbonate", true},
           {"mass", "how much of it", "100 mg", true},
           {"liquid", "what answers it", "white-vinegar", true},
           {"strength", "of the liquid, as on your label", "5 % w/v", false}},
          crust_dose,
          {{"swabs", "swabs", 0, base::Rounding::up},
           {"volume", "volume", 3, base::Rounding::half_away, 10, 1},
           {"gas", "gas at 20 °C", 1}}};
}

}  // namespace benchleaf::bench
