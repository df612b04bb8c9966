// In: liquid=, ratio= or strength= (with stock= where the label differs), volume=. Out: concentrate and water. 1+20 is 1 part
// and 20 parts of water, 1 in 20 is 1 part in 20 of the whole; a colon can mean either, so both are answered.

#include "bench/bath_mix.h"

#include <optional>
#include <string>

#include "base/ascii.h"
#include "base/number.h"
#include "base/quantity.h"
#include "bench/calculation.h"

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
      ask_.fail("ratio", "is no ratio of two numbers: write 1+20, or 1 in 20, which is not the same");
      return;
    }
    const double in_parts = ratio->one / (ratio->one + ratio->other);
    const double in_share = ratio->one / ratio->other;
    answer_.formula("1+n: volume / (1 + n); 1 in n: volume / n", "arithmetic of mixtures", model::Trust::handbook);
    if (ratio->counting != Counting::share) both("concentrate", "water", in_parts);
    if (ratio->counting == Counting::parts) return;
    if (ratio->counting == Counting::share) {
      both("concentrate", "water", in_share);
      return;
    }
    if (ratio->other <= ratio->one) return;
    both("concentrate-in", "water-in", in_share);
    answer_.caution(
        "",
        "A colon is read both ways: the first pair is 1 part and so many parts of water, the second 1 part in so many. "
        "Read the label; in doubt take the weaker.");
  }

  void both(const char* concentrate, const char* water, double share) {
    const Amount part = volume_ * exactly(share);
    answer_.put(concentrate, part, Unit::millilitre);
    answer_.put(water, volume_ - part, Unit::millilitre);
    answer_.step("1 part of concentrate in " + shown(1 / share, Unit::one) + " parts of the mixture");
  }

  void by_strength() {
    const Amount strength = ask_.amount("strength", Unit::percent_mass_by_volume, kStrength);
    std::optional<Amount> stock;
    if (ask_.has("stock")) {
      stock = ask_.amount("stock", Unit::percent_mass_by_volume, kStrength);
    } else if (!liquid_.empty()) {
      stock = ask_.stated(liquid_, "made-of.0.strength", Unit::percent_mass_by_volume);
    }
    if (ask_.failed()) return;
    if (!stock) {
      of_solid(strength);
      return;
    }
    if (strength.high > stock->low) {
      ask_.fail("strength", "is above that of the stock, " + base::to_terminal(shown(*stock, Unit::percent_mass_by_volume)));
      return;
    }
    const Amount part = volume_ * strength / *stock;
    answer_.formula("c1 V1 = c2 V2", "mass balance", model::Trust::handbook);
    answer_.put("concentrate", part, Unit::millilitre);
    answer_.put("water", volume_ - part, Unit::millilitre);
    answer_.step("stock of " + shown(*stock, Unit::percent_mass_by_volume) + " to " +
                 shown(strength, Unit::percent_mass_by_volume));
    answer_.holds("Make up to the volume: acid and water together may take a little less room than apart.");
  }

  /// A pure solid: grams, made up with water.
  void of_solid(const Amount& strength) {
    const bool solid = !liquid_.empty() && liquid_.rfind("substance/", 0) == 0 && ask_.word(liquid_, "acts-as") != "";
    if (!solid) {
      ask_.fail("stock", "is missing: the strength of the bottle, as on its label");
      return;
    }
    answer_.formula("mass = strength x volume", "definition of % w/v", model::Trust::handbook);
    answer_.put("solid", strength * volume_ * exactly(kGramsPerPercent), Unit::gram);
    answer_.step(shown(strength, Unit::percent_mass_by_volume) + " is so many grams in 100 mL");
    answer_.holds("The pure dry solid, weighed, made up with water to the volume. Of a liquid give its strength as stock.");
  }

  void warnings() {
    const std::string agent = liquid_.rfind("substance/", 0) == 0 ? liquid_ : ask_.word(liquid_, "made-of.0.substance");
    if (!agent.empty() && ask_.word(agent, "acts-as") == "acid")
      answer_.warn("caution/acid-splash", "Acid into water, never water into acid; glasses on.");
    const auto flash = liquid_.empty() ? std::nullopt : ask_.stated(liquid_, "flash-point", Unit::degree_celsius);
    if (flash) answer_.warn("caution/solvent-in-ultrasonic-bath", "The liquid burns: never into an ultrasonic bath.");
    if (agent == "substance/sodium-hypochlorite")
      answer_.warn("caution/bleach-makes-poison-gas", "Bleach with acid, ammonia or spirit makes poison gas: not on this bench.");
    answer_.caution("", "Label the bottle with what it holds, its strength and the date.");
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
          bath_mix};
}

}  // namespace benchleaf::bench
