// In: liquid=, volume=, room=, air-changes=. Out: what the vapour makes of the air of the room at once and over a quarter of an
// hour, the limit for breathing, and how long to air.

#include "bench/vapour.h"

#include <cmath>
#include <optional>
#include <string>

#include "base/quantity.h"
#include "bench/calculation.h"
#include "bench/volatile_part.h"
#include "model/record_ref.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "vapour";
constexpr std::string_view kLimits = "breathing-limits";
constexpr Plausible kVolume{0.001, 10000};  // mL
constexpr Plausible kRoom{0.1, 10000};      // m3
constexpr Plausible kChanges{0, 100};       // an hour
constexpr double kLitresACubicMetre = 1000;
constexpr double kMillion = 1e6;
constexpr double kQuarter = 0.25;  // h
constexpr double kMinutesAnHour = 60;

/// A limit for breathing, ppm.
struct Limit {
  Amount long_term;                  ///< over a working day
  std::optional<Amount> short_term;  ///< over a quarter of an hour
};

/// The mean share of the first concentration over a quarter of an hour.
double mean_share(double changes) {
  const double reach = changes * kQuarter;
  return reach > 1e-9 ? -std::expm1(-reach) / reach : 1;
}

class Vapour {
 public:
  Vapour(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    const std::string liquid = ask_.record("liquid", {"chemistry", "substance"});
    const Amount volume = ask_.amount("volume", Unit::millilitre, kVolume);
    const Amount room = ask_.amount("room", Unit::cubic_metre, kRoom);
    changes_ = ask_.has("air-changes") ? ask_.amount("air-changes", Unit::one, kChanges)
                                       : ask_.row("bench-rules", "air-changes-shut", "value", Unit::one);
    if (ask_.failed()) return;
    find_part(liquid);
    if (ask_.failed()) return;
    const Amount litres = vapour_of(ask_, part_, volume);
    const Amount at_once = litres / (room * exactly(kLitresACubicMetre)) * exactly(kMillion);
    if (ask_.failed()) return;
    warn(liquid);
    put(at_once);
    close();
  }

 private:
  std::optional<Amount> limit_of(const std::string& substance, const char* column) const {
    return ask_.row_if_any(std::string(kLimits), model::RecordRef(substance).id(), column, Unit::part_per_million);
  }

  /// The part with the lowest limit against what there is of it: the first that has one; its limit goes with it.
  void find_part(const std::string& liquid) {
    if (limit_of(liquid, "long-term")) {
      part_ = pure_substance(ask_, liquid);
    } else {
      std::optional<double> worst;
      for (int i = 0;; ++i) {
        const std::string path = "made-of." + std::to_string(i);
        const std::string substance = ask_.word(liquid, path + ".substance");
        if (substance.empty()) break;
        const auto limit = limit_of(substance, "long-term");
        const auto strength = limit ? grams_a_millilitre(ask_, liquid, path, substance) : std::nullopt;
        if (!limit) continue;
        const double weight = (strength ? strength->high : 1) / limit->nominal;
        if (worst && weight <= *worst) continue;
        worst = weight;
        path_ = path;
      }
      if (!worst) {
        ask_.fail("liquid", "no limit for breathing is known of " + ask_.title(liquid) + " nor of what is in it",
                  "that says nothing of its harm: follow the sheet of the liquid");
        return;
      }
      part_ = part_of_liquid(ask_, answer_, liquid, path_);
    }
    limit_.long_term = limit_of(part_.substance, "long-term").value_or(exactly(1));
    limit_.short_term = limit_of(part_.substance, "short-term");
  }

  void warn(const std::string& liquid) {
    const bool has_limit = ask_.stated(part_.substance, "lower-limit", Unit::percent).has_value();
    if (has_limit && catches_fire(ask_, liquid)) answer_.beware(ask_.caution("vapour burns"));
    answer_.warn("", "Near the open bottle the air holds far more than the mean of the room: head back, window open.");
  }

  void put(const Amount& at_once) {
    answer_.formula("c = V strength / M x molar volume / room; c(t) = c exp(-n t)", "ideal gas at 20 °C, air fully mixed",
                    model::Trust::handbook);
    answer_.put("at-once", at_once, Unit::part_per_million);
    const Amount quarter = over<2>({at_once, changes_}, [](const auto& p) { return p[0] * mean_share(p[1]); });
    answer_.put("quarter-hour", quarter, Unit::part_per_million);
    answer_.put("limit", limit_.long_term, Unit::part_per_million);
    if (limit_.short_term) answer_.put("short-limit", *limit_.short_term, Unit::part_per_million);
    const Amount& against = limit_.short_term ? *limit_.short_term : limit_.long_term;
    const bool over_it = quarter.high > against.nominal;
    answer_.decide("verdict", over_it ? Code::over_limit : Code::under_limit,
                   over_it ? "above the limit: less of it, a larger room, or a draught that takes it away"
                           : "below the limit in the mean of the room",
                   detail::resting_on({quarter, against}));
    clear_after(at_once);
    answer_.step(ask_.title(part_.substance) + ": " + shown(part_.strength.nominal, 3, Unit::gram_per_millilitre) + " of it, " +
                 shown(part_.molar_mass, Unit::gram_per_mole) + "; air changes " + shown(changes_, Unit::one) + " times an hour");
  }

  void clear_after(const Amount& at_once) {
    if (at_once.high <= limit_.long_term.nominal) return;
    if (changes_.low <= 0) {
      answer_.holds("Without a change of air it stays above the limit.");
      return;
    }
    const Amount minutes = over<3>({at_once, limit_.long_term, changes_},
                                   [](const auto& p) { return p[0] > p[1] ? std::log(p[0] / p[1]) / p[2] * kMinutesAnHour : 0; });
    answer_.put("clear-after", minutes, Unit::minute);
  }

  void close() {
    answer_.holds("All of it has evaporated at once and mixes with the air of the whole room.");
    answer_.holds("A limit is made for healthy people at work, over a day or a quarter of an hour: below it is not harmless.");
    answer_.nominal_only(changes_, "the change of air");
  }

  Ask& ask_;
  Answer& answer_;
  std::string path_;
  VolatilePart part_;
  Limit limit_;
  Amount changes_;
};

Result vapour(const Inputs& inputs, const Context& context) { return calculate<Vapour>(vapour_calculator(), inputs, context); }

}  // namespace

Calculator vapour_calculator() {
  return {kName,
          "what a liquid makes of the air of a room, against the limit for breathing",
          {{"liquid", "a liquid or substance of the handbook", "isopropanol", true},
           {"volume", "that evaporates", "5 mL", true},
           {"room", "volume of the room", "30 m3", true},
           {"air-changes", "of the whole room an hour; a shut window if left out", "2", false}},
          vapour,
          {{"at-once", "at once", 1, base::Rounding::up, 100, 0},
           {"quarter-hour", "mean of a quarter of an hour", 1, base::Rounding::up, 100, 0},
           {"limit", "limit, working day", 1, base::Rounding::half_away, 0, 0, base::Trailing::cut},
           {"short-limit", "limit, quarter of an hour", 1, base::Rounding::half_away, 0, 0, base::Trailing::cut},
           {"verdict", "verdict"},
           {"clear-after", "below the limit after", 0, base::Rounding::up}}};
}

}  // namespace benchleaf::bench
