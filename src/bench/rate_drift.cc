// In: ppm=, per-day=, or two readings of a watch against the time, temperature= or hours on the wrist. Out: the rate in ppm,
// seconds a day and a month, what the temperature does to it, and over which time a rate must be measured.

#include "bench/rate_drift.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

#include "base/quantity.h"
#include "bench/calculation.h"
#include "bench/day_count.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "rate-drift";
constexpr Plausible kPpm{-5000, 5000};
constexpr Plausible kPerDay{-400, 400};        // s/d
constexpr Plausible kTemperature{-40, 85};     // degrees Celsius
constexpr Plausible kReading{-86400, 86400};   // s
constexpr Plausible kError{0, 60};             // s
constexpr Plausible kDays{0.01, 4000};         // d
constexpr Plausible kHours{0, 24};             // h
constexpr double kSecondsADayPerPpm = 0.0864;  // 86,400 s by a million
constexpr double kDaysAMonth = 365.25 / 12;
constexpr double kHoursADay = 24;

/// What a tuning fork does with its temperature.
struct Parabola {
  Amount range, usual, turnover;

  /// -k (T - T0)^2 over all of k, T and T0: the turnover may lie inside the interval of temperatures.
  Amount drift_at(const Amount& temperature) const {
    Amount drift = detail::resting_on({temperature, range, turnover});
    const double off = temperature.nominal - turnover.nominal;
    drift.nominal = -usual.nominal * off * off;
    const double from = temperature.low - turnover.high;
    const double to = temperature.high - turnover.low;
    const double most = std::max(from * from, to * to);
    const double least = from <= 0 && to >= 0 ? 0 : std::min(from * from, to * to);
    drift.low = -range.high * most;
    drift.high = -range.low * least;
    drift.has_ends = true;
    return drift;
  }
};

class Rate {
 public:
  Rate(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    refuse_doubles();
    read_constants();
    if (ask_.failed()) return;
    Amount rate = read_rate();
    if (ask_.failed()) return;
    if (ask_.has("temperature")) {
      rate = rate + drift_at_temperature();
    } else if (ask_.has("wrist-hours")) {
      rate = rate + drift_of_a_day();
    }
    if (ask_.failed()) return;
    put_rate(rate);
    put_pause();
    close();
  }

 private:
  void refuse_doubles() {
    const bool readings = ask_.has("first") || ask_.has("second");
    const int ways = int{ask_.has("ppm")} + int{ask_.has("per-day")} + int{readings};
    const bool warm = ask_.has("temperature") || ask_.has("wrist-hours");
    if (ways > 1)
      ask_.fail(readings ? "first" : "per-day", readings ? "cannot stand beside ppm or per-day" : "cannot stand beside ppm");
    if (ways == 0 && !warm) ask_.fail("ppm", "is missing, and so are per-day, first and second, and temperature");
    if (ask_.has("temperature") && ask_.has("wrist-hours")) ask_.fail("wrist-hours", "cannot stand beside temperature");
    for (const char* of_readings : {"days", "from", "to", "reading-error"}) {
      if (!readings && ask_.has(of_readings)) ask_.fail(of_readings, "belongs to first and second, the two readings");
    }
    for (const char* of_day : {"wrist", "table"}) {
      if (!ask_.has("wrist-hours") && ask_.has(of_day)) ask_.fail(of_day, "belongs to wrist-hours");
    }
  }

  void read_constants() {
    const auto per_kelvin = Unit::part_per_million_per_square_kelvin;
    parabola_.range = ask_.row("physical-constants", "quartz-parabola", "value", per_kelvin);
    parabola_.usual = ask_.row("physical-constants", "quartz-parabola-usual", "value", per_kelvin);
    parabola_.turnover = ask_.row("physical-constants", "quartz-turnover", "value", Unit::degree_celsius);
    pause_ = ask_.row("physical-constants", "suppression-usual", "value", Unit::second);
    pauses_ = ask_.row("physical-constants", "suppression", "value", Unit::second);
  }

  Amount read_rate() {
    if (ask_.has("first") || ask_.has("second")) return of_readings();
    if (ask_.has("ppm")) return ask_.amount("ppm", Unit::part_per_million, kPpm);
    if (ask_.has("per-day")) return ask_.amount("per-day", Unit::second_per_day, kPerDay) / exactly(kSecondsADayPerPpm);
    return exactly(0);
  }

  /// (second - first) / days, each reading off by its error either way.
  Amount of_readings() {
    const Amount first = ask_.signed_amount("first", Unit::second, kReading);
    const Amount second = ask_.signed_amount("second", Unit::second, kReading);
    const Amount error = ask_.has("reading-error") ? ask_.amount("reading-error", Unit::second, kError)
                                                   : ask_.row("bench-rules", "reading-error", "value", Unit::second);
    if (ask_.failed()) return exactly(0);
    const Amount days = read_days();
    if (ask_.failed()) return exactly(0);
    const auto blurred = [&error](const Amount& reading) {
      Amount wide = detail::resting_on({reading, error});
      wide.nominal = reading.nominal;
      wide.low = reading.low - error.high;
      wide.high = reading.high + error.high;
      wide.has_ends = true;
      return wide;
    };
    const Amount per_day = (blurred(second) - blurred(first)) / days;
    answer_.formula("rate = (second - first) / days; each reading off by its error either way", "arithmetic",
                    model::Trust::given);
    answer_.put("gained", second - first, Unit::second);
    answer_.put("days", days, Unit::day);
    answer_.step("(" + shown(second, Unit::second) + " - (" + shown(first, Unit::second) + ")) / " +
                 shown(days.nominal, 3, Unit::day));
    answer_.holds("Readings by eye or ear are off by " + shown(error, Unit::second) +
                  " each: twice the time between them halves that.");
    return per_day / exactly(kSecondsADayPerPpm);
  }

  Amount read_days() {
    const bool by_dates = ask_.has("from") || ask_.has("to");
    if (by_dates == ask_.has("days")) {
      ask_.fail("days", by_dates ? "cannot stand beside from and to" : "is missing, and so are from and to");
      return exactly(1);
    }
    if (!by_dates) return ask_.amount("days", Unit::day, kDays);
    const auto from = read_moment("from");
    const auto to = read_moment("to");
    if (ask_.failed()) return exactly(1);
    if (*to - *from < kDays.least || *to - *from > kDays.most) {
      ask_.fail("to", "lies not after from, or more than eleven years");
      return exactly(1);
    }
    return exactly(*to - *from);
  }

  std::optional<double> read_moment(std::string_view input) {
    if (!ask_.has(input)) {
      ask_.fail(input, "is missing");
      return std::nullopt;
    }
    const auto days = days_of_moment(ask_.text(input));
    if (!days) ask_.fail(input, "is no date: write year-month-day, with the time behind it where it counts");
    return days;
  }

  void say_parabola() {
    answer_.formula("drift = -k (T - T0)²", "parabola of a tuning-fork quartz, k about 0.034 ppm/K², T0 about 25 °C",
                    model::Trust::memory);
    answer_.holds(
        "A rate that was given is taken as the rate at T0. Both k and T0 differ from quartz to quartz: the ends are theirs.");
  }

  Amount drift_at_temperature() {
    const Amount temperature = ask_.amount("temperature", Unit::degree_celsius, kTemperature);
    if (ask_.failed()) return exactly(0);
    const Amount drift = parabola_.drift_at(temperature);
    say_parabola();
    answer_.put("drift", drift, Unit::part_per_million);
    answer_.step("T - T0 = " + shown(temperature.nominal - parabola_.turnover.nominal, Unit::kelvin) + ", nominal");
    return drift;
  }

  /// Hours on the wrist and the rest on the table, each at its temperature.
  Amount drift_of_a_day() {
    const Amount hours = ask_.amount("wrist-hours", Unit::hour, kHours);
    const auto temperature = [this](const char* input, const char* rule) {
      return ask_.has(input) ? ask_.amount(input, Unit::degree_celsius, kTemperature)
                             : ask_.row("bench-rules", rule, "value", Unit::degree_celsius);
    };
    const Amount wrist = temperature("wrist", "wrist-temperature");
    const Amount table = temperature("table", "table-temperature");
    if (ask_.failed()) return exactly(0);
    const Amount drift = over<3>({hours, parabola_.drift_at(wrist), parabola_.drift_at(table)},
                                 [](const auto& p) { return (p[0] * p[1] + (kHoursADay - p[0]) * p[2]) / kHoursADay; });
    say_parabola();
    answer_.put("drift", drift, Unit::part_per_million);
    answer_.step(shown(hours, Unit::hour) + " a day at " + shown(wrist, Unit::degree_celsius) + " on the wrist, the rest at " +
                 shown(table, Unit::degree_celsius));
    return drift;
  }

  void put_rate(const Amount& ppm) {
    const Amount per_day = ppm * exactly(kSecondsADayPerPpm);
    answer_.formula("1 ppm = 0.0864 s/d; a month is 365.25 d / 12", "definition of ppm", model::Trust::given);
    answer_.put("ppm", ppm, Unit::part_per_million);
    answer_.put("per-day", per_day, Unit::second_per_day);
    answer_.put("per-month", per_day * exactly(kDaysAMonth), Unit::second);
  }

  void put_pause() {
    answer_.formula("a whole number of periods of the pulse suppression", "service sheets of watch circuits",
                    model::Trust::trade);
    answer_.put("measure-over", pause_, Unit::second);
    answer_.step("Where the circuit drops pulses the rate jumps once a period: " + shown(pause_, Unit::second) + " as a rule, " +
                 shown(pauses_, Unit::second) + " are known.");
  }

  void close() {
    answer_.holds("A minus loses, a plus gains.");
    answer_.caution("",
                    "A watch with pulse suppression has no trimmer: a rate measured over a part of the period is nobody's rate.");
  }

  Ask& ask_;
  Answer& answer_;
  Parabola parabola_;
  Amount pause_, pauses_;
};

Result rate_drift(const Inputs& inputs, const Context& context) {
  return calculate<Rate>(rate_drift_calculator(), inputs, context);
}

}  // namespace

Calculator rate_drift_calculator() {
  return {kName,
          "a rate from two readings, ppm to seconds and back, the drift with temperature",
          {{"ppm", "rate", "5 ppm", false},
           {"per-day", "rate, instead of ppm", "0.5 s/d", false},
           {"first", "first reading: seconds fast, or with a minus slow", "0.5 s", false},
           {"second", "second reading", "4.0 s", false},
           {"days", "between the two readings", "14 d", false},
           {"from", "date of the first reading, instead of days", "2026-03-01 20:00", false},
           {"to", "date of the second reading", "2026-03-15 20:00", false},
           {"reading-error", "of each reading", "0.3 s", false},
           {"temperature", "of the watch", "35 °C", false},
           {"wrist-hours", "a day on the wrist, the rest on the table", "16 h", false},
           {"wrist", "temperature of the watch on the wrist", "30 °C", false},
           {"table", "temperature of the watch on the table", "20 °C", false}},
          rate_drift,
          {{"gained", "gained between the readings", 1},
           {"days", "in", 3, base::Rounding::half_away, 0, 3, base::Trailing::cut},
           {"drift", "drift with temperature", 2},
           {"ppm", "rate", 2},
           {"per-day", "a day", 2},
           {"per-month", "a month", 1},
           {"measure-over", "measure over whole periods of", 0}},
          "ppm, per-day, two readings with the days between them, or a temperature"};
}

}  // namespace benchleaf::bench
