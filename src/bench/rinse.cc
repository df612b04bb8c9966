// In: carry-over=, volume=, times=. Out: what is left of the old liquid after some rinses, and after one with all the water.

#include "bench/rinse.h"

#include <cmath>

#include "base/quantity.h"
#include "bench/calculation.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "rinse";
constexpr Plausible kCarryOver{0.0001, 1000};  // mL
constexpr Plausible kVolume{0.01, 10000};      // mL
constexpr Plausible kTimes{1, 20};
constexpr double kPartsPerMillion = 1e6;

void reckon_rinse(Ask& ask, Answer& answer) {
  const Amount carry = ask.amount("carry-over", Unit::millilitre, kCarryOver);
  const Amount volume = ask.amount("volume", Unit::millilitre, kVolume);
  const Amount times = ask.amount("times", Unit::one, kTimes);
  if (std::floor(times.nominal) != times.nominal || times.has_ends) ask.fail("times", "is a whole number of rinses");
  if (ask.failed()) return;

  answer.formula("left = (v / (V + v))^k", "mass balance of a bath that mixes fully", model::Trust::given);
  const int k = static_cast<int>(times.nominal);
  const Amount left = over<2>({carry, volume}, [k](const auto& p) {
    double share = kPartsPerMillion;
    for (int i = 0; i < k; ++i) share *= p[0] / (p[0] + p[1]);
    return share;
  });
  const Amount single = over<2>({carry, volume}, [k](const auto& p) { return kPartsPerMillion * p[0] / (p[0] + p[1] * k); });
  answer.put("left", left, Unit::part_per_million);
  answer.put("single", single, Unit::part_per_million);
  answer.step("one rinse leaves " + shown(100 * carry.nominal / (carry.nominal + volume.nominal), 3, Unit::percent) +
              " of what clung");
  answer.step("all the water at once: " + shown(volume.nominal * k, Unit::millilitre));
  answer.holds("Holds when each rinse mixes fully and the same volume clings each time; blind holes and threads hold more.");
  answer.nominal_only(left, "carry-over and volume");
}

class Rinse {
 public:
  Rinse(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}
  void run() { reckon_rinse(ask_, answer_); }

 private:
  Ask& ask_;
  Answer& answer_;
};

Result rinse(const Inputs& inputs, const Context& context) { return calculate<Rinse>(rinse_calculator(), inputs, context); }

}  // namespace

Calculator rinse_calculator() {
  return {kName,
          "what is left of a liquid after some rinses",
          {{"carry-over", "liquid that clings to the part", "0.1 mL", true},
           {"volume", "water of one rinse", "5 mL", true},
           {"times", "number of rinses", "3", true}},
          rinse,
          {{"left", "of the old liquid is left", 1, base::Rounding::up, 1000, 0},
           {"single", "by one rinse with all the water", 1, base::Rounding::up, 1000, 0}}};
}

}  // namespace benchleaf::bench
