// In: ppm= or per-day=, temperature=. Out: the rate in ppm, seconds a day and a month, what the temperature does to it, and
// over which time a rate must be measured.

#include "bench/rate_drift.h"

#include <algorithm>

#include "base/quantity.h"
#include "bench/answer.h"
#include "bench/ask.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "rate-drift";
constexpr Plausible kPpm{-5000, 5000};
constexpr Plausible kPerDay{-400, 400};        // s/d
constexpr Plausible kTemperature{-40, 85};     // degrees Celsius
constexpr double kSecondsADayPerPpm = 0.0864;  // 86,400 s by a million
constexpr double kDaysAMonth = 365.25 / 12;

/// -k (T - T0)^2 over all of k, T and T0: the turnover may lie inside the interval of temperatures.
Amount drift_of(const Amount& temperature, const Amount& parabola, const Amount& usual, const Amount& turnover) {
  Amount drift = detail::resting_on({temperature, parabola, turnover});
  const double off = temperature.nominal - turnover.nominal;
  drift.nominal = -usual.nominal * off * off;
  const double from = temperature.low - turnover.high;
  const double to = temperature.high - turnover.low;
  const double most = std::max(from * from, to * to);
  const double least = from <= 0 && to >= 0 ? 0 : std::min(from * from, to * to);
  drift.low = -parabola.high * most;
  drift.high = -parabola.low * least;
  drift.has_ends = true;
  return drift;
}

void put_rate(Answer& answer, const Amount& ppm) {
  const Amount per_day = ppm * exactly(kSecondsADayPerPpm);
  answer.formula("1 ppm = 0.0864 s/d; a month is 365.25 d / 12", "definition of ppm", model::Trust::handbook);
  answer.put("ppm", ppm, Unit::part_per_million);
  answer.put("per-day", per_day, Unit::second_per_day);
  answer.put("per-month", per_day * exactly(kDaysAMonth), Unit::second);
}

Result rate_drift(const Inputs& inputs, const Context& context) {
  const Calculator self = rate_drift_calculator();
  Ask ask(self, inputs, context);
  const bool warm = ask.has("temperature");
  if (ask.has("ppm") && ask.has("per-day")) ask.fail("per-day", "cannot stand beside ppm");
  if (!ask.has("ppm") && !ask.has("per-day") && !warm) ask.fail("ppm", "is missing, and so are per-day and temperature");
  Amount rate = exactly(0);
  if (ask.has("ppm")) rate = ask.amount("ppm", Unit::part_per_million, kPpm);
  if (ask.has("per-day")) rate = ask.amount("per-day", Unit::second_per_day, kPerDay) / exactly(kSecondsADayPerPpm);
  const Amount temperature = warm ? ask.amount("temperature", Unit::degree_celsius, kTemperature) : exactly(0);
  const Amount parabola = ask.row("physical-constants", "quartz-parabola", "value", Unit::part_per_million_per_square_kelvin);
  const Amount usual = ask.row("physical-constants", "quartz-parabola-usual", "value", Unit::part_per_million_per_square_kelvin);
  const Amount turnover = ask.row("physical-constants", "quartz-turnover", "value", Unit::degree_celsius);
  const Amount pause = ask.row("physical-constants", "suppression-usual", "value", Unit::second);
  const Amount pauses = ask.row("physical-constants", "suppression", "value", Unit::second);
  if (ask.failed()) return ask.refused();

  Answer answer(kName);
  if (warm) {
    const Amount drift = drift_of(temperature, parabola, usual, turnover);
    answer.formula("drift = -k (T - T0)²", "parabola of a tuning-fork quartz, k about 0.034 ppm/K², T0 about 25 °C",
                   model::Trust::memory);
    answer.put("drift", drift, Unit::part_per_million);
    answer.step("T - T0 = " + shown(temperature.nominal - turnover.nominal, Unit::kelvin) + ", nominal");
    rate = rate + drift;
    answer.holds(
        "A rate that was given is taken as the rate at T0. Both k and T0 differ from quartz to quartz: the ends are theirs.");
  }
  put_rate(answer, rate);
  answer.formula("a whole number of periods of the pulse suppression", "service sheets of watch circuits", model::Trust::trade);
  answer.put("measure-over", pause, Unit::second);
  answer.step("Where the circuit drops pulses the rate jumps once a period: " + shown(pause, Unit::second) + " as a rule, " +
              shown(pauses, Unit::second) + " are known.");
  answer.holds("A minus loses, a plus gains.");
  answer.caution("",
                 "A watch with pulse suppression has no trimmer: a rate measured over a part of the period is nobody's rate.");
  return answer.done();
}

}  // namespace

Calculator rate_drift_calculator() {
  return {kName,
          "ppm to seconds and back, the drift with temperature, how long to measure",
          {{"ppm", "rate", "5 ppm", false},
           {"per-day", "rate, instead of ppm", "0.5 s/d", false},
           {"temperature", "of the watch", "35 °C", false}},
          rate_drift};
}

}  // namespace benchleaf::bench
