// In: depth= or pressure=. Out: the other, in fresh and in sea water. Says nothing about any watch, and says so first.

#include "bench/water_pressure.h"

#include "base/quantity.h"
#include "bench/calculation.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "water-pressure";
constexpr Plausible kDepth{0.001, 11000};     // m
constexpr Plausible kPressure{0.0001, 1200};  // bar
constexpr double kPascalPerBar = 100000;

class Water {
 public:
  Water(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    const bool by_depth = ask_.has("depth");
    if (by_depth == ask_.has("pressure"))
      ask_.fail(by_depth ? "pressure" : "depth", by_depth ? "cannot stand beside depth" : "is missing, and so is pressure");
    const Amount given = by_depth ? ask_.amount("depth", Unit::metre, kDepth) : ask_.amount("pressure", Unit::bar, kPressure);
    const Amount gravity = ask_.row("physical-constants", "gravity", "value", Unit::metre_per_square_second);
    const Amount fresh = ask_.row("physical-constants", "fresh-water", "value", Unit::kilogram_per_cubic_metre);
    const Amount sea = ask_.row("physical-constants", "sea-water", "value", Unit::kilogram_per_cubic_metre);
    if (ask_.failed()) return;
    answer_.beware(ask_.caution("water-pressure test"));
    answer_.formula("p = density x gravity x depth", "hydrostatics; overpressure, the air above not counted",
                    model::Trust::handbook);
    const auto convert = [&](const Amount& density) {
      const Amount per_metre = density * gravity / exactly(kPascalPerBar);
      return by_depth ? given * per_metre : given / per_metre;
    };
    const Unit unit = by_depth ? Unit::bar : Unit::metre;
    answer_.put(by_depth ? "fresh" : "fresh-depth", convert(fresh), unit);
    answer_.put(by_depth ? "sea" : "sea-depth", convert(sea), unit);
    const Amount bar = fresh * gravity / exactly(kPascalPerBar);
    answer_.step("a metre of fresh water weighs " + shown(bar.nominal, Unit::bar) + " on what lies below it");
    answer_.step("fresh water " + shown(fresh, Unit::kilogram_per_cubic_metre) + ", sea water " +
                 shown(sea, Unit::kilogram_per_cubic_metre));
    answer_.holds("Still water. A jet, a jump and a stroke of the arm add pressure of their own.");
    answer_.caution(
        "", "What stands on a dial or a back, in m, ft, ATM or bar, was a test of new watches and is no promise of this one.");
  }

 private:
  Ask& ask_;
  Answer& answer_;
};

Result water_pressure(const Inputs& inputs, const Context& context) {
  return calculate<Water>(water_pressure_calculator(), inputs, context);
}

}  // namespace

Calculator water_pressure_calculator() {
  return {kName,
          "depth of water to overpressure and back; tells nothing about any watch",
          {{"depth", "depth of water", "30 m", false}, {"pressure", "overpressure, instead of a depth", "3 bar", false}},
          water_pressure,
          {{"fresh", "in fresh water", 3},
           {"sea", "in sea water", 3},
           {"fresh-depth", "in fresh water", 2},
           {"sea-depth", "in sea water", 2}},
          "depth or pressure"};
}

}  // namespace benchleaf::bench
