// In: cell= or voltage= and resistance=, current=, cells=, drop=, least=, or a module= that states them. Out: the voltage under
// load, and whether it keeps the module running. Of a module without a cell: the same for every cell that it takes.

#include "bench/lamp_sag.h"

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "bench/calculation.h"
#include "model/record_ref.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "lamp-sag";
constexpr Plausible kVoltage{0.5, 20};        // V
constexpr Plausible kResistance{0.1, 10000};  // ohm
constexpr Plausible kCurrent{0.001, 500};     // mA
constexpr Plausible kCells{1, 8};
constexpr Plausible kDrop{0, 2};      // V
constexpr Plausible kLeast{0.5, 20};  // V
constexpr double kVoltsByMilliampere = 0.001;

/// A source of voltage.
struct Source {
  Amount voltage;     ///< open, V
  Amount resistance;  ///< within, ohm
};

class Sag {
 public:
  Sag(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    if (ask_.has("module")) module_ = ask_.record("module", {"module"});
    if (ask_.failed()) return;
    read_load();
    if (ask_.failed()) return;
    answer_.formula("V = n (E - I R) - drop", "Ohm's law; R by the table cell-resistances, as the face of the cell",
                    model::Trust::memory);
    if (ask_.has("cell") || ask_.has("voltage") || module_.empty()) {
      one_source();
    } else {
      each_cell();
    }
    if (!ask_.failed()) close();
  }

 private:
  void read_load() {
    current_ = ask_.has("current") || module_.empty() ? ask_.amount("current", Unit::milliampere, kCurrent) : heaviest_load();
    cells_ = exactly(1);
    if (ask_.has("cells")) {
      cells_ = ask_.amount("cells", Unit::one, kCells);
    } else if (!module_.empty() && ask_.word(module_, "wiring") == "series") {
      cells_ = ask_.stated(module_, "cell-count", Unit::one).value_or(exactly(1));
    }
    if (cells_.nominal != static_cast<int>(cells_.nominal) || cells_.has_ends) ask_.fail("cells", "is a whole number of cells");
    drop_ = ask_.has("drop") ? ask_.amount("drop", Unit::volt, kDrop) : exactly(0);
    if (ask_.has("least")) least_ = ask_.amount("least", Unit::volt, kLeast);
    if (!least_ && !module_.empty()) {
      least_ = ask_.stated(module_, "supply", Unit::volt);
      if (least_ && least_->has_ends) {
        least_->nominal = least_->high = least_->low;
        least_->printed.clear();  // the range of the supply, of which the lower end counts
      }
    }
  }

  /// The most that the module is stated to draw in any state.
  Amount heaviest_load() {
    std::optional<Amount> most;
    for (int i = 0;; ++i) {
      const auto load = ask_.stated(module_, "loads." + std::to_string(i) + ".current", Unit::milliampere);
      if (!load) break;
      if (!most || load->high > most->high) most = load;
    }
    if (!most) ask_.fail("current", "is missing, and " + ask_.title(module_) + " states no load");
    return most.value_or(exactly(1));
  }

  void one_source() {
    const std::string cell = ask_.has("cell") ? ask_.record("cell", {"cell"}) : std::string();
    if (ask_.failed()) return;
    if (cell.empty() && !ask_.has("voltage")) ask_.fail("cell", "is missing, and so is voltage");
    if (cell.empty() && !ask_.has("resistance"))
      ask_.fail("resistance", "is missing: of a cell that is not named nobody knows it");
    if (ask_.failed()) return;
    std::optional<Source> source;
    if (!cell.empty()) source = of_cell(cell);
    if (ask_.failed()) return;
    if (!source && !cell.empty() && !ask_.has("resistance")) {
      ask_.fail("resistance", "of " + ask_.title(cell) + " is not known: measure it, or give it");
      return;
    }
    Source given = source.value_or(Source{exactly(1), exactly(1)});
    if (ask_.has("voltage")) given.voltage = ask_.amount("voltage", Unit::volt, kVoltage);
    if (ask_.has("resistance")) given.resistance = ask_.amount("resistance", Unit::ohm, kResistance);
    if (ask_.failed()) return;
    const Amount sag = current_ * given.resistance * exactly(kVoltsByMilliampere);
    const Amount under = under_load(given);
    answer_.put("sag", sag, Unit::volt);
    answer_.put("under-load", under, Unit::volt);
    answer_.step("open " + shown(given.voltage, Unit::volt) + ", " + figure_of(given.resistance, 1, Unit::ohm).printed +
                 " within, " + shown(current_, Unit::milliampere) + " drawn");
    if (least_) answer_.decide("verdict", stand(under), words(stand(under)), under);
    if (!least_) answer_.lacks("least-voltage", module_);
  }

  void each_cell() {
    for (int i = 0;; ++i) {
      const std::string cell = ask_.word(module_, "cells." + std::to_string(i));
      if (cell.empty()) break;
      const auto source = of_cell(cell);
      if (ask_.failed()) return;
      if (!source) {
        answer_.lacks("resistance", cell);
        answer_.holds("Of " + ask_.title(cell) + " the resistance is not known.");
        continue;
      }
      const Amount under = under_load(*source);
      Output& output = answer_.put("under-load", under, Unit::volt);
      output.name = "under-load." + model::RecordRef(cell).id();
      output.label = ask_.word(cell, "designation");
      output.record = cell;
      if (least_) output.code = stand(under);
      if (least_) output.printed += ", " + words(output.code);
    }
    if (!least_) answer_.lacks("least-voltage", module_);
  }

  Amount under_load(const Source& source) const {
    return over<5>({source.voltage, source.resistance, current_, cells_, drop_},
                   [](const auto& p) { return p[3] * (p[0] - p[1] * p[2] * kVoltsByMilliampere) - p[4]; });
  }

  /// Open voltage by its system, resistance by system and drain, for its face; nothing where no row speaks of it.
  std::optional<Source> of_cell(const std::string& cell) {
    const std::string system = ask_.word(cell, "system");
    const std::string drain = ask_.word(cell, "drain");
    std::optional<Amount> open;
    for (const auto& letter : ask_.row_keys("cell-systems")) {
      if (ask_.row_word("cell-systems", letter, "system") == system)
        open = ask_.row_if_any("cell-systems", letter, "nominal", Unit::volt);
    }
    const auto diameter = ask_.stated(cell, "size.diameter", Unit::millimetre);
    for (const auto& kind : {system + " " + drain, system}) {
      const auto row = ask_.row_if_any("cell-resistances", kind, "resistance", Unit::ohm);
      if (!row || !open || !diameter) continue;
      const Amount wide = ask_.row("cell-resistances", kind, "diameter", Unit::millimetre);
      return Source{*open, over<3>({*row, wide, *diameter}, [](const auto& p) { return p[0] * p[1] * p[1] / (p[2] * p[2]); })};
    }
    return std::nullopt;
  }

  Code stand(const Amount& under) const {
    if (under.low >= least_->nominal) return Code::stands;
    return under.high < least_->nominal ? Code::does_not_stand : Code::perhaps_below;
  }

  std::string words(Code code) const {
    const std::string least = shown(*least_, Unit::volt);
    if (code == Code::stands) return "keeps " + least;
    return code == Code::does_not_stand ? "falls below " + least : "perhaps falls below " + least;
  }

  void close() {
    answer_.holds("A fresh cell at room temperature. Cold doubles the resistance and more, and so does the end of its life.");
    answer_.holds("The resistance is that of the first second; the voltage goes on falling while the lamp is on.");
    answer_.caution("", "Measure it in the watch: meter across the cell, button pressed, the lowest reading counts.");
  }

  Ask& ask_;
  Answer& answer_;
  std::string module_;
  Amount current_, cells_, drop_;
  std::optional<Amount> least_;
};

Result lamp_sag(const Inputs& inputs, const Context& context) { return calculate<Sag>(lamp_sag_calculator(), inputs, context); }

}  // namespace

Calculator lamp_sag_calculator() {
  return {
      kName,
      "the voltage of a cell under lamp or alarm, and whether the module still runs",
      {{"cell", "a cell of the handbook, by designation or number", "sr626sw", false},
       {"current", "that lamp, alarm or display draws", "10 mA", false},
       {"module", "a module of the handbook: its load, its least voltage, its cells", "led-two-cells", false},
       {"cells", "in series", "1", false},
       {"least", "voltage at which the module still runs", "1.2 V", false},
       {"voltage", "open voltage, instead of that of the cell's system", "1.55 V", false},
       {"resistance", "within the cell, where it was measured", "15 ohm", false},
       {"drop", "of a diode in series", "0.2 V", false}},
      lamp_sag,
      {{"sag", "sags by", 3, base::Rounding::up}, {"under-load", "under load", 2, base::Rounding::down}, {"verdict", "module"}},
      "cell, or voltage and resistance; and current; or module"};
}

}  // namespace benchleaf::bench
