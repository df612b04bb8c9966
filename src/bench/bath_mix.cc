// In: liquid=, ratio= or strength= (with stock= where the label differs), volume=. Out: concentrate and water. 1+20 is 1 part
// and 20 parts of water, 1 in 20 is 1 part in 20 of the whole; a colon can mean either, so both are answered.

#include "bench/bath_mix.h"

#include <algorithm>
#include <optional>
#include <string>

#include "base/ascii.h"
#include "base/number.h"
#include "base/quantity.h"
#include "bench/calculation.h"
#include "bench/solution_strength.h"
#include "model/record_ref.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "bath-mix";
constexpr Plausible kVolume{0.1, 100000};   // mL
constexpr Plausible kStrength{0.001, 100};  // % w/v
constexpr double kMostParts = 10000;
constexpr double kGramsPerPercent = 0.01;  // g in 1 mL of 1 % w/v

/// How a ratio was written.
enum class Counting { parts, share, either };

struct Ratio {
  Counting counting = Counting::either;
  double one = 1;
  double other = 0;
  bool turned = false;  ///< written with the larger figure first
};

std::optional<Ratio> read_ratio(const std::string& text) {
  const std::string packed = base::without_spaces(text);
  const struct {
    std::string_view sign;
    Counting counting;
  } kSigns[] = {{"+", Counting::parts}, {"in", Counting::share}, {":", Counting::either}};
  for (const auto& [sign, counting] : kSigns) {
    const std::size_t at = packed.find(sign);
    if (at == std::string::npos) continue;
    const auto one = base::parse_decimal(packed.substr(0, at));
    const auto other = base::parse_decimal(packed.substr(at + sign.size()));
    const bool sensible = one && other && *one > 0 && *other > 0 && *one <= kMostParts && *other <= kMostParts;
    if (!sensible || (counting == Counting::share && *other <= *one)) return std::nullopt;
    // `20:1` is a bath of 20 parts of water, whichever way round the label counts.
    if (counting == Counting::either && *one > *other) return Ratio{counting, *other, *one, true};
    return Ratio{counting, *one, *other};
  }
  return std::nullopt;
}

class Mix {
 public:
  Mix(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    if (ask_.has("liquid")) liquid_ = ask_.record("liquid", {"chemistry", "substance"});
    volume_ = ask_.amount("volume", Unit::millilitre, kVolume);
    if (ask_.failed()) return;
    if (ask_.has("ratio") == ask_.has("strength")) {
      ask_.fail("ratio", ask_.has("ratio") ? "cannot stand beside strength" : "is missing, and so is strength");
      return;
    }
    if (ask_.has("ratio")) {
      by_ratio();
    } else {
      by_strength();
    }
    if (ask_.failed()) return;
    answer_.nominal_only(volume_, "volume");
    warnings();
  }

 private:
  void by_ratio() {
    const auto ratio = read_ratio(ask_.text("ratio"));
    if (!ratio) {
      ask_.fail("ratio", "is no ratio of two numbers: write 1+20, 1:20 or 1 in 20, which are not the same");
      return;
    }
    const double in_parts = ratio->one / (ratio->one + ratio->other);
    const double in_share = ratio->one / ratio->other;
    answer_.formula("1+n: volume / (1 + n); 1 in n: volume / n", "arithmetic of mixtures", model::Trust::given);
    if (ratio->counting != Counting::share) both("concentrate", "water", in_parts);
    if (ratio->counting == Counting::parts) return;
    if (ratio->counting == Counting::share) {
      both("concentrate", "water", in_share);
      return;
    }
    both("concentrate-in", "water-in", in_share);
    answer_.lacks("meaning-of-the-colon");
    answer_.caution(
        "",
        "A colon is read both ways: the first pair is 1 part and so many parts of water, the second 1 part in so many. "
        "Read the label; in doubt take the weaker.");
    if (ratio->turned)
      answer_.caution("",
                      "The larger figure of the ratio is taken as the water, whichever stands first; a label that means the "
                      "other way round says so.");
  }

  void both(const char* concentrate, const char* water, double share) {
    answer_.put(concentrate, volume_ * exactly(share), Unit::millilitre);
    answer_.put(water, volume_ * exactly(1 - share), Unit::millilitre);
    answer_.step("1 part of concentrate in " + shown(1 / share, Unit::one) + " parts of the mixture");
  }

  void by_strength() {
    const auto strength = read_strength(ask_, "strength", kStrength);
    std::optional<Strength> stock;
    if (ask_.has("stock")) stock = read_strength(ask_, "stock", kStrength);
    if (!ask_.has("stock") && !liquid_.empty()) stock = stated_strength(ask_, liquid_, "made-of.0.strength");
    if (ask_.failed() || !strength) return;
    if (!stock) {
      of_solid(*strength);
      return;
    }
    answer_.step("stock of " + shown(stock->amount, stock->unit) + " to " + shown(strength->amount, strength->unit));
    // By volume the stock follows from the ratio alone; how much water that takes is a matter of density.
    const Unit kind = strength->unit;
    const bool plain =
        kind == Unit::percent_mass_by_volume || (kind == Unit::percent_by_volume && !solution_of(ask_, agent_of_liquid()));
    if (kind == stock->unit && plain) {
      thin(strength->amount, stock->amount);
    } else {
      thin_by_density(*strength, *stock);
    }
  }

  /// Two strengths of one kind, mass or volume in volume.
  void thin(const Amount& wanted, const Amount& bottle) {
    if (wanted.high > bottle.low) {
      ask_.fail("strength", "is above that of the stock");
      return;
    }
    answer_.formula("c1 V1 = c2 V2", "mass balance", model::Trust::given);
    const Amount share = wanted / bottle;
    answer_.put("concentrate", volume_ * share, Unit::millilitre);
    answer_.put("water", over<2>({volume_, share}, [](const auto& p) { return p[0] * (1 - p[1]); }), Unit::millilitre);
    answer_.holds("Make up to the volume: the two together may take a little less room than apart.");
  }

  /// Two kinds of per cent, or two by mass: both as mass in volume, by the density of the solutions.
  void thin_by_density(const Strength& strength, const Strength& stock) {
    const std::string agent = agent_of_liquid();
    const auto wanted = agent.empty() ? std::nullopt : grams_in_millilitre(ask_, strength, agent);
    const auto bottle = agent.empty() ? std::nullopt : grams_in_millilitre(ask_, stock, agent);
    if (!wanted || !bottle) {
      ask_.fail(
          "strength", "cannot be held against that of the stock: no density is on file that turns one into the other",
          agent.empty() ? "name the liquid, or give both as % w/v or both as % v/v" : "give both as % w/v or both as % v/v");
      return;
    }
    if (wanted->high > bottle->low) {
      ask_.fail("strength", "is above that of the stock");
      return;
    }
    answer_.formula("c1 V1 = c2 V2, both as mass in volume; water = (V d - V1 d1) / d of water, d the densities",
                    "mass balance; densities of the table solution-densities", model::Trust::given);
    const Amount concentrate = volume_ * *wanted / *bottle;
    answer_.put("concentrate", concentrate, Unit::millilitre);
    put_water(agent, *wanted, *bottle);
    answer_.holds("At 20 °C, of " + ask_.title(agent) + " and water alone.");
  }

  /// By mass: what is poured together takes less room than apart.
  void put_water(const std::string& agent, const Amount& wanted, const Amount& bottle) {
    const auto solution = solution_of(ask_, agent);
    if (!solution || grams_per_millilitre(solution->curve, solution->curve.back().by_mass) < bottle.high) {
      answer_.lacks("water");
      answer_.holds("How much water that takes is not known: pour the concentrate, and make up to the volume.");
      return;
    }
    const auto& curve = solution->curve;
    const Amount rests = solution->rests_on(share_by_mass(curve, wanted.low), share_by_mass(curve, bottle.high));
    const Amount water = over<4>({volume_, wanted, bottle, rests}, [&curve](const auto& p) {
      return standards::water_to_add(curve, p[0], p[0] * p[1] / p[2], p[2], p[1]);
    });
    answer_.put("water", water, Unit::millilitre);
  }

  std::string agent_of_liquid() const {
    if (liquid_.empty()) return {};
    return model::RecordRef(liquid_).is(model::Kind::substance) ? liquid_ : ask_.word(liquid_, "made-of.0.substance");
  }

  /// A pure solid: grams, made up with water.
  void of_solid(const Strength& of) {
    const Amount& strength = of.amount;
    const bool solid = model::RecordRef(liquid_).is(model::Kind::substance) && ask_.word(liquid_, "acts-as") != "";
    if (!solid) {
      ask_.fail("stock", "is missing: the strength of the bottle, as on its label");
      return;
    }
    if (of.unit != Unit::percent_mass_by_volume) {
      ask_.fail("strength", "of a solid is mass in volume: write it as % w/v");
      return;
    }
    answer_.formula("mass = strength x volume", "definition of % w/v", model::Trust::given);
    answer_.put("solid", strength * volume_ * exactly(kGramsPerPercent), Unit::gram);
    answer_.step(shown(strength, Unit::percent_mass_by_volume) + " is so many grams in 100 mL");
    answer_.holds("The pure dry solid, weighed, made up with water to the volume. Of a liquid give its strength as stock.");
  }

  void warnings() {
    const std::string agent = agent_of_liquid();
    if (!agent.empty() && ask_.word(agent, "acts-as") == "acid") answer_.beware(ask_.caution("bath-mix acid"));
    const auto flash = liquid_.empty() ? std::nullopt : ask_.stated(liquid_, "flash-point", Unit::degree_celsius);
    if (flash) answer_.beware(ask_.caution("bath-mix tank"));
    if (!agent.empty()) warn_of_statements(agent);
    answer_.caution("", "Label the bottle with what it holds, its strength and the date.");
  }

  /// Statements of the agent for which the table has a caution: EUH031, acids set poison gas free.
  void warn_of_statements(const std::string& agent) {
    const std::vector<std::string> keys = ask_.row_keys("calculator-cautions");
    for (std::size_t i = 0;; ++i) {
      const std::string front = "classes." + std::to_string(i);
      if (ask_.word(agent, front + ".class").empty()) return;
      const std::string key = "bath-mix " + ask_.word(agent, front + ".statement");
      if (std::find(keys.begin(), keys.end(), key) != keys.end()) answer_.beware(ask_.caution(key));
    }
  }

  Ask& ask_;
  Answer& answer_;
  std::string liquid_;
  Amount volume_;
};

Result bath_mix(const Inputs& inputs, const Context& context) { return calculate<Mix>(bath_mix_calculator(), inputs, context); }

}  // namespace

Calculator bath_mix_calculator() {
  return {kName,
          "how much concentrate and how much water",
          {{"liquid", "what is thinned", "white-vinegar", false},
           {"ratio", "1+20 or 1 in 20, which is not the same", "1+20", false},
           {"strength", "wanted, instead of a ratio", "2 % w/v", false},
           {"stock", "strength of the bottle", "25 % w/v", false},
           {"volume", "of the whole mixture", "600 mL", true}},
          bath_mix,
          {{"concentrate", "concentrate", 3, base::Rounding::half_away, 10, 1},
           {"water", "water", 3, base::Rounding::half_away, 10, 1},
           {"concentrate-in", "concentrate, read as 1 in", 3, base::Rounding::half_away, 10, 1},
           {"water-in", "water, read as 1 in", 3, base::Rounding::half_away, 10, 1},
           {"solid", "dry solid", 2}},
          "volume; and ratio or strength"};
}

}  // namespace benchleaf::bench
