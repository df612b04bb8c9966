// In: liquid=, volume=, room=. Out: the vapour of a spill, the air that it makes burn, and its share in a room.

#include "bench/fumes.h"

#include <optional>
#include <string>

#include "base/quantity.h"
#include "bench/calculation.h"

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
    const Amount molar_volume = ask_.row("physical-constants", "molar-volume", "value", Unit::litre_per_mole);
    if (ask_.failed()) return;
    find_burning(liquid);
    if (ask_.failed()) return;
    const Amount density = ask_.needed("liquid", substance_, "density", Unit::gram_per_millilitre);
    const Amount molar_mass = ask_.needed("liquid", substance_, "molar-mass", Unit::gram_per_mole);
    const Amount limit = ask_.needed("liquid", substance_, "lower-limit", Unit::percent);
    if (ask_.failed()) return;
    const Amount vapour = volume * share_ * density / molar_mass * molar_volume;
    answer_.warn("caution/solvent-vapour",
                 "The vapour burns and runs along the bench to a spark: window open, no flame, no iron, lid on.");
    answer_.formula("vapour = V density / M x molar volume; air = vapour / lower limit of burning",
                    "ideal gas, 20 °C, 101.325 kPa", model::Trust::handbook);
    answer_.put("vapour", vapour, Unit::litre);
    answer_.put("burning-air", vapour * exactly(100) / limit, Unit::litre);
    answer_.step(ask_.title(substance_) + ": burns from " + shown(limit, Unit::percent) + " in air, " +
                 shown(density, Unit::gram_per_millilitre) + ", " + shown(molar_mass, Unit::gram_per_mole));
    if (ask_.has("room")) in_room(vapour, limit);
    if (ask_.failed()) return;
    answer_.holds(
        "All of it has evaporated. The vapour is heavier than air and lies on the bench: near the spill it burns long before the "
        "room is full.");
    answer_.nominal_only(vapour, "volume");
  }

 private:
  /// The part of the liquid that burns: the one with a lower limit; its share by volume.
  void find_burning(const std::string& liquid) {
    share_ = exactly(1);
    substance_ = liquid;
    for (int i = 0;; ++i) {
      const std::string path = "made-of." + std::to_string(i);
      const std::string part = ask_.word(liquid, path + ".substance");
      if (part.empty()) break;
      if (!ask_.stated(part, "lower-limit", Unit::percent)) continue;
      substance_ = part;
      const auto by_volume = ask_.stated(liquid, path + ".strength", Unit::percent_by_volume);
      if (by_volume) share_ = *by_volume / exactly(100);
      if (!by_volume) answer_.holds("The share of it in the liquid is not stated by volume: all of the liquid is reckoned.");
      break;
    }
    if (ask_.stated(substance_, "lower-limit", Unit::percent)) return;
    ask_.fail("liquid", ask_.title(liquid) + " states no limit of burning: nothing in it is known to burn");
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
  std::string substance_;
  Amount share_;
};

Result fumes(const Inputs& inputs, const Context& context) { return calculate<Fumes>(fumes_calculator(), inputs, context); }

}  // namespace

Calculator fumes_calculator() {
  return {kName,
          "how much air the vapour of a liquid makes burn",
          {{"liquid", "a liquid or substance of the handbook", "isopropanol", true},
           {"volume", "that evaporates", "1 mL", true},
           {"room", "volume of the room", "30 m3", false}},
          fumes};
}

}  // namespace benchleaf::bench
