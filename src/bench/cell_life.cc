// In: a cell or a charge, mean= and pulsed loads or a module=, self-discharge=, margin=. Out: a life in months with its ends.

#include "bench/cell_life.h"

#include <string>

#include "base/quantity.h"
#include "bench/calculation.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "cell-life";
constexpr Plausible kCapacity{0.1, 5000};       // mAh
constexpr Plausible kMean{0.001, 100000};       // microampere
constexpr Plausible kPulse{0.001, 100};         // mA
constexpr Plausible kPulseTime{0.0001, 86400};  // s
constexpr Plausible kPerDay{0, 100000};
constexpr Plausible kLoss{0, 100};   // per cent a year
constexpr Plausible kMargin{0, 90};  // per cent
constexpr double kHoursAYear = 8760;
constexpr double kMonthsAYear = 12;
constexpr double kDaysAMonth = 365.25 / 12;
constexpr double kFewMonths = 2;     // a shorter life is told in days
constexpr double kFewDays = 3;       // and one shorter still in hours
constexpr double kMostMonths = 600;  // fifty years: no cell keeps as long
constexpr double kHoursADay = 24;
constexpr double kSecondsADay = 86400;
constexpr double kMicro = 1000;  // microampere by milliampere

class Life {
 public:
  Life(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    read_cell();
    read_load();
    const Amount margin = ask_.has("margin") ? ask_.amount("margin", Unit::percent, kMargin)
                                             : ask_.row("bench-rules", "margin", "value", Unit::percent);
    const Amount loss = read_loss();
    if (ask_.failed()) return;
    const Amount own = capacity_ * loss / exactly(100 * kHoursAYear) * exactly(kMicro);
    if (mean_.low + own.low <= 0) {
      ask_.fail("mean", "draws nothing, and the cell loses nothing: no life can be told");
      return;
    }
    const Amount months = over<4>({capacity_, margin, mean_, loss}, [](const auto& p) {
      const double own_loss = p[0] * p[3] / (100 * kHoursAYear) * kMicro;
      return p[0] * (1 - p[1] / 100) / ((p[2] + own_loss) / kMicro * kHoursAYear) * kMonthsAYear;
    });
    answer_.formula("years = C (1 - margin) / ((I + I_self) 8.76), C in mAh, I in µA; I_self = C s / 8.76",
                    "charge is current by time; a year of 8,760 h", model::Trust::given);
    if (months.low > kMostMonths) {
      ask_.fail("mean", "is so little that the life would be longer than any cell keeps",
                "a module draws at least some tenths of a microampere: measure it, with the cell's own loss as self-discharge");
      return;
    }
    if (months.nominal * kDaysAMonth * kHoursADay < 1) {
      ask_.fail("mean", "empties the cell within the hour", "no watch draws that for long: give a lamp or alarm as pulse");
      return;
    }
    put_life(months);
    answer_.put("mean-current", mean_, Unit::microampere);
    answer_.put("self-current", own, Unit::microampere);
    working(margin, loss);
    answer_.nominal_only(months, "charge, load and loss");
  }

 private:
  void put_life(const Amount& months) {
    const Amount days = months * exactly(kDaysAMonth);
    if (days.nominal < kFewDays)
      answer_.put("life-hours", days * exactly(kHoursADay), Unit::hour);
    else if (months.nominal < kFewMonths)
      answer_.put("life-days", days, Unit::day);
    else
      answer_.put("life", months, Unit::month);
  }

  void read_cell() {
    if (ask_.has("cell")) cell_ = ask_.record("cell", {"cell"});
    if (ask_.failed()) return;
    if (ask_.has("capacity")) {
      capacity_ = ask_.amount("capacity", Unit::milliampere_hour, kCapacity);
    } else if (!cell_.empty()) {
      capacity_ = ask_.needed("cell", cell_, "capacity", Unit::milliampere_hour);
    } else {
      ask_.fail("capacity", "is missing, and so is cell");
    }
  }

  void read_load() {
    mean_ = exactly(0);
    const bool pulsed = ask_.has("pulse") || ask_.has("pulse-time") || ask_.has("per-day");
    if (!ask_.has("mean") && !pulsed && !ask_.has("module")) {
      ask_.fail("mean", "is missing, and so are pulse and module");
      return;
    }
    if (ask_.has("module")) of_module();
    if (ask_.has("mean")) mean_ = mean_ + ask_.amount("mean", Unit::microampere, kMean);
    if (!pulsed) return;
    const Amount pulse = ask_.amount("pulse", Unit::milliampere, kPulse);
    add_pulse("pulse", pulse, ask_.amount("pulse-time", Unit::second, kPulseTime), ask_.amount("per-day", Unit::one, kPerDay));
  }

  void add_pulse(const std::string& what, const Amount& milliamperes, const Amount& seconds, const Amount& per_day) {
    if (seconds.high * per_day.high > kSecondsADay) {
      ask_.fail("per-day", "and pulse-time make more than a day of pulses");
      return;
    }
    const Amount add = milliamperes * exactly(kMicro) * seconds * per_day / exactly(kSecondsADay);
    mean_ = mean_ + add;
    answer_.step(what + ": " + shown(add.nominal, 3, Unit::microampere) + " in the mean of a day");
  }

  /// The first state that goes on, and all that last for a time.
  void of_module() {
    const std::string module = ask_.record("module", {"module"});
    if (ask_.failed()) return;
    bool steady = false;
    for (int i = 0;; ++i) {
      const std::string path = "loads." + std::to_string(i);
      const auto current = ask_.stated(module, path + ".current", Unit::microampere);
      if (!current) break;
      const std::string state = ask_.word(module, path + ".state");
      const std::string name = "load " + std::to_string(i + 1) + " of the module" + (state.empty() ? "" : ", " + state);
      const auto lasts = ask_.stated(module, path + ".for", Unit::second);
      const auto per_day = ask_.stated(module, path + ".per-day", Unit::one);
      if (lasts && per_day) {
        add_pulse(name, *current / exactly(kMicro), *lasts, *per_day);
      } else if (!steady) {
        mean_ = mean_ + *current;
        answer_.step(name + ": " + shown(*current, Unit::microampere));
        steady = true;
      }
    }
    if (!steady) ask_.fail("module", module + " states no load that goes on");
  }

  Amount read_loss() {
    if (ask_.has("self-discharge")) return ask_.amount("self-discharge", Unit::percent_per_year, kLoss);
    const std::string system = cell_.empty() ? std::string() : ask_.word(cell_, "system");
    const std::string drain = cell_.empty() ? std::string() : ask_.word(cell_, "drain");
    for (const auto& kind : {system + " " + drain, system}) {
      if (auto loss = ask_.row_if_any("cell-losses", kind, "loss", Unit::percent_per_year)) return *loss;
    }
    return ask_.row("cell-losses", "not known", "loss", Unit::percent_per_year);
  }

  void working(const Amount& margin, const Amount& loss) {
    answer_.step("charge " + shown(capacity_, Unit::milliampere_hour) + ", of which " + shown(margin, Unit::percent) +
                 " is not counted on");
    answer_.step("loss " + shown(loss, Unit::percent_per_year));
    answer_.holds("Rounded down. Room temperature, a fresh cell, no lamp beyond what was given.");
    answer_.caution("", "The charge of a cell holds for its own test load; a heavier one gets less out of it.");
    if (!cell_.empty() && ask_.word(cell_, "status") == "withdrawn")
      answer_.caution("", "This cell is withdrawn: what is left of it is spent.");
    answer_.caution("", "A spent cell leaks: change it at the end of this time, whether the watch runs or not.");
  }

  Ask& ask_;
  Answer& answer_;
  std::string cell_;
  Amount capacity_, mean_;
};

Result cell_life(const Inputs& inputs, const Context& context) {
  return calculate<Life>(cell_life_calculator(), inputs, context);
}

}  // namespace

Calculator cell_life_calculator() {
  return {kName,
          "how long a cell lasts in a watch",
          {{"cell", "a cell of the handbook, by designation or number", "sr626sw", false},
           {"capacity", "charge, instead of a cell's own", "26 mAh", false},
           {"mean", "current that always flows", "1.5 µA", false},
           {"pulse", "current of a lamp or alarm", "10 mA", false},
           {"pulse-time", "how long it flows each time", "2 s", false},
           {"per-day", "how often a day", "5", false},
           {"module", "typical loads of a module of the handbook", "lcd-no-lamp", false},
           {"self-discharge", "what the cell loses by itself", "2 to 4 % per year", false},
           {"margin", "part of the charge that is not counted on", "20 %", false}},
          cell_life,
          {{"life", "life", 0, base::Rounding::down},
           {"life-days", "life", 0, base::Rounding::down},
           {"life-hours", "life", 0, base::Rounding::down},
           {"mean-current", "mean current", 2, base::Rounding::half_away, 100, 0},
           {"self-current", "loss as a current", 2, base::Rounding::half_away, 100, 0}},
          "cell or capacity; and mean, pulse or module"};
}

}  // namespace benchleaf::bench
