// In: temperature= and humidity= of the air in which a watch is closed, plate= and glass= of the test. Out: the temperature at
// which that air fogs, closed in and warmed, and what fog under a cold drop then tells.

#include "bench/fog_point.h"

#include <cmath>
#include <optional>
#include <string>

#include "base/quantity.h"
#include "bench/calculation.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "fog-point";
constexpr Plausible kAir{-20, 60};      // degrees Celsius
constexpr Plausible kHumidity{1, 100};  // per cent
constexpr Plausible kPlate{0, 60};
constexpr Plausible kGlass{-20, 60};

double kelvin(double celsius) { return base::to_si(celsius, Unit::degree_celsius); }

/// The temperature at which air of this temperature and humidity is saturated, both by Magnus.
double dew_point(double celsius, double percent, double factor, double offset) {
  const double gamma = std::log(percent / 100) + factor * celsius / (offset + celsius);
  return offset * gamma / (factor - gamma);
}

class Fog {
 public:
  Fog(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    air_ = ask_.amount("temperature", Unit::degree_celsius, kAir);
    humidity_ = ask_.amount("humidity", Unit::percent, kHumidity);
    factor_ = ask_.row("physical-constants", "magnus-factor", "value", Unit::one);
    offset_ = ask_.row("physical-constants", "magnus-temperature", "value", Unit::degree_celsius);
    if (ask_.failed()) return;
    answer_.formula("g = ln(RH / 100) + 17.62 T / (243.12 + T); fog point = 243.12 g / (17.62 - g)",
                    "Magnus formula over water, constants as meteorologists use them", model::Trust::memory);
    const Amount fog =
        over<4>({air_, humidity_, factor_, offset_}, [](const auto& p) { return dew_point(p[0], p[1], p[2], p[3]); });
    answer_.put("fog-point", fog, Unit::degree_celsius);
    const Amount inside = ask_.has("plate") ? warmed(fog) : fog;
    if (ask_.has("glass") && !ask_.failed()) told(inside);
    if (ask_.failed()) return;
    close(inside);
  }

 private:
  /// The same air in the closed case on the plate: its pressure grows with its temperature, and the vapour's with it.
  Amount warmed(const Amount& cold) {
    const Amount plate = ask_.amount("plate", Unit::degree_celsius, kPlate);
    if (ask_.failed()) return cold;
    const Amount warm = over<5>({air_, humidity_, factor_, offset_, plate},
                                [](const auto& p) { return dew_point(p[0], p[1] * kelvin(p[4]) / kelvin(p[0]), p[2], p[3]); });
    answer_.formula("vapour pressure x plate / closing temperature, both in K", "ideal gas in a closed case",
                    model::Trust::handbook);
    answer_.put("fog-point-warm", warm, Unit::degree_celsius);
    return warm;
  }

  void told(const Amount& inside) {
    const Amount glass = ask_.amount("glass", Unit::degree_celsius, kGlass);
    if (ask_.failed()) return;
    const std::string at = shown(glass, Unit::degree_celsius);
    const Amount rests_on = detail::resting_on({inside, glass});
    if (inside.high < glass.low) {
      answer_.decide("verdict", Code::fog_means_water,
                     "fog under a drop of " + at + " means water in the watch: the air shut in stays clear there", rests_on);
    } else if (inside.low > glass.high) {
      answer_.decide("verdict", Code::fog_from_air,
                     "fog under a drop of " + at + " tells nothing: the air shut in fogs there even in a tight watch", rests_on);
    } else {
      answer_.decide("verdict", Code::not_told, "not told: a drop of " + at + " is too near to the fog point of the air shut in",
                     rests_on);
    }
  }

  void close(const Amount& inside) {
    const std::string at = shown(inside.nominal, 1, Unit::degree_celsius);
    answer_.step("Fog on a glass warmer than " + at + " means water in the watch; on a colder one it tells nothing.");
    answer_.holds("Air that was shut in at this temperature and humidity. Gaskets, dials and oil give off and take up water.");
    answer_.holds("Where the test tells nothing: open, dry for an hour, close in drier air, test again.");
    answer_.beware(ask_.caution("fog-point water"));
    answer_.nominal_only(inside, "temperature and humidity");
  }

  Ask& ask_;
  Answer& answer_;
  Amount air_, humidity_, factor_, offset_;
};

Result fog_point(const Inputs& inputs, const Context& context) { return calculate<Fog>(fog_point_calculator(), inputs, context); }

}  // namespace

Calculator fog_point_calculator() {
  return {kName,
          "when the air shut into a watch fogs, and what the warm-plate test then tells",
          {{"temperature", "of the air when the back was closed", "22 °C", true},
           {"humidity", "of that air, relative", "50 %", true},
           {"plate", "temperature of the warm plate", "42 °C", false},
           {"glass", "of the spot under the cold drop", "10 °C", false}},
          fog_point,
          {{"fog-point", "fogs at", 1}, {"fog-point-warm", "on the plate, fogs at", 1}, {"verdict", "test"}}};
}

}  // namespace benchleaf::bench
