// In: liquid=, volume=, room=. Out: the vapour of a spill, the air that it makes burn, and its share in a room.

#include "bench/fumes.h"

#include <string>

#include "base/quantity.h"
#include "bench/calculation.h"
#include "bench/volatile_part.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "fumes";
constexpr Plausible kVolume{0.01, 10000};  // mL
constexpr Plausible kRoom{0.1, 10000};     // m3
constexpr double kLitresACubicMetre = 1000;
constexpr double kMillion = 1e6;

class Fumes {
 public:
  Fumes(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    const std::string liquid = ask_.record("liquid", {"chemistry", "substance"});
    const Amount volume = ask_.amount("volume", Unit::millilitre, kVolume);
    if (ask_.failed()) return;
    find_burning(liquid);
    if (ask_.failed()) return;
    const Amount limit = ask_.needed("liquid", part_.substance, "lower-limit", Unit::percent);
    const Amount vapour = vapour_of(ask_, part_, volume);
    if (ask_.failed()) return;
    warn(liquid);
    answer_.formula("vapour = V strength / M x molar volume; air = vapour / lower limit of burning",
                    "ideal gas, 20 °C, 101.325 kPa", model::Trust::handbook);
    answer_.put("vapour", vapour, Unit::litre);
    answer_.put("burning-air", vapour * exactly(100) / limit, Unit::litre);
    answer_.step(ask_.title(part_.substance) + ": burns from " + shown(limit, Unit::percent) + " in air, " +
                 shown(part_.strength.nominal, 4, Unit::gram_per_millilitre) + " of it in the liquid, " +
                 shown(part_.molar_mass, Unit::gram_per_mole));
    if (ask_.has("room")) in_room(vapour, limit);
    if (ask_.failed()) return;
    answer_.holds("All of it has evaporated. The vapour is heavier than air and lies on the bench.");
    answer_.nominal_only(vapour, "volume");
  }

 private:
  /// The part of the liquid that burns, the first with a lower limit, by its stated strength.
  void find_burning(const std::string& liquid) {
    const auto burns = [this](const std::string& one) { return ask_.stated(one, "lower-limit", Unit::percent).has_value(); };
    for (int i = 0;; ++i) {
      const std::string path = "made-of." + std::to_string(i);
      const std::string part = ask_.word(liquid, path + ".substance");
      if (part.empty()) break;
      if (!burns(part)) continue;
      part_ = part_of_liquid(ask_, answer_, liquid, path);
      return;
    }
    if (burns(liquid)) {
      part_ = pure_substance(ask_, liquid);
      return;
    }
    ask_.fail("liquid", ask_.title(liquid) + " states no limit of burning: nothing in it is known to burn");
  }

  /// A dilute acid has vapour with a limit of burning and no flash point: cold, it never makes air that burns.
  void warn(const std::string& liquid) {
    if (catches_fire(ask_, liquid)) {
      answer_.beware(ask_.caution("fumes burn"));
      answer_.holds("Near the spill it burns long before the room is full.");
      return;
    }
    answer_.step(ask_.title(liquid) + ": flash point " + ask_.word(liquid, "flash-point"));
    answer_.holds(
        "By its flash point the liquid does not catch fire at the bench. The air that burns is that of one part alone: " +
        ask_.title(part_.substance) + ".");
  }

  void in_room(const Amount& vapour, const Amount& limit) {
    const Amount room = ask_.amount("room", Unit::cubic_metre, kRoom);
    if (ask_.failed()) return;
    const Amount share = vapour / (room * exactly(kLitresACubicMetre));
    answer_.formula("share = vapour / room", "no change of air, fully mixed", model::Trust::handbook);
    answer_.put("in-room", share * exactly(kMillion), Unit::part_per_million);
    answer_.put("of-limit", share * exactly(100) * exactly(100) / limit, Unit::percent);
    answer_.holds("Limits for breathing lie far below those of burning: see the sheet of the liquid.");
  }

  Ask& ask_;
  Answer& answer_;
  VolatilePart part_;
};

Result fumes(const Inputs& inputs, const Context& context) { return calculate<Fumes>(fumes_calculator(), inputs, context); }

}  // namespace

Calculator fumes_calculator() {
  return {kName,
          "how much air the vapour of a liquid makes burn",
          {{"liquid", "a liquid or substance of the handbook", "isopropanol", true},
           {"volume", "that evaporates", "1 mL", true},
           {"room", "volume of the room", "30 m3", false}},
          fumes,
          {{"vapour", "vapour", 2, base::Rounding::up},
           {"burning-air", "air that burns", 1, base::Rounding::up},
           {"in-room", "in the room", 0, base::Rounding::up},
           {"of-limit", "of the limit of burning", 2, base::Rounding::up}}};
}

}  // namespace benchleaf::bench
