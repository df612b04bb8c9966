// In: a cell of the handbook, or measured diameter= and height= with voltage=; load=, lamp=, alarm=. Out: the cells that go in
// its place, best first, each with verdict and reason. A measured old cell is an upper bound: it swells and carries crust.

#include "bench/cell_swap.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "base/quantity.h"
#include "bench/calculation.h"
#include "bench/cell_candidates.h"
#include "model/record_ref.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "cell-swap";
constexpr Plausible kDiameter{3, 40};     // mm
constexpr Plausible kHeight{0.5, 30};     // mm
constexpr Plausible kVoltage{0.5, 20};    // V
constexpr Plausible kLoad{0.01, 500000};  // microampere
constexpr std::size_t kMostShown = 24;

class Swap {
 public:
  Swap(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    refuse_charged();
    if (ask_.failed()) return;
    if (ask_.has("cell")) {
      of_record();
    } else {
      of_measures();
    }
    read_drain();
    if (ask_.failed()) return;
    std::vector<Candidate> found = find_candidates(ask_, wanted_);
    if (ask_.failed()) return;
    if (found.empty()) {
      const std::string size = size_not_on_file(found);
      ask_.fail(ask_.has("cell") ? "cell" : "diameter",
                (size.empty() ? "" : "this is " + size + ", and ") + "no cell of the handbook goes into this place");
      return;
    }
    if (!voltage_known_ && voltages_differ(found)) ask_for_voltage(found);
    answer_.beware(ask_.caution("cell-swap swallowed"));
    name_size(found);
    list(found);
    cautions(found);
  }

 private:
  /// Every system of the table cell-systems is a primary one: charged, it heats and can burst.
  void refuse_charged() {
    std::string charging = ask_.choice("charging", {"none", "light", "motion"}, "");
    if (ask_.has("module")) {
      const std::string module = ask_.record("module", {"module"});
      if (charging.empty() && !ask_.failed()) charging = ask_.word(module, "charging");
    }
    if (charging.empty() || charging == "none") return;
    ask_.fail(ask_.has("charging") ? "charging" : "module",
              "this watch charges its cell by " + charging +
                  ": no cell of this book goes in, a primary cell heats when it is charged and can burst and ignite",
              "leave the charged cell in, and send the watch to a workshop that has the rechargeable one of its movement");
  }

  void of_record() {
    for (const char* other : {"diameter", "height", "voltage", "measured"}) {
      if (ask_.has(other)) ask_.fail(other, "cannot stand beside cell");
    }
    const std::string cell = ask_.record("cell", {"cell"});
    if (ask_.failed()) return;
    wanted_ = place_of_cell(ask_, cell);
    answer_.step(ask_.title(wanted_.cell) + ": " + shown(wanted_.diameter.high, Unit::millimetre) + " by " +
                 shown(wanted_.height.high, Unit::millimetre) + ", " + wanted_.systems.front());
  }

  void of_measures() {
    wanted_.diameter = ask_.amount("diameter", Unit::millimetre, kDiameter);
    wanted_.height = ask_.amount("height", Unit::millimetre, kHeight);
    const std::string measured = ask_.choice("measured", {"old-cell", "well"}, "old-cell");
    if (ask_.failed()) return;
    if (measured == "old-cell") wanted_.measured = {ask_.reading("diameter"), ask_.reading("height")};
    const auto volts = ask_.has("voltage") ? std::optional(ask_.amount("voltage", Unit::volt, kVoltage)) : std::nullopt;
    if (ask_.failed()) return;
    find_systems(volts);
    if (wanted_.systems.empty()) ask_.fail("voltage", "no system of cells has that voltage");
    answer_.step("place: " + shown(wanted_.diameter.high, Unit::millimetre) + " by " +
                 shown(wanted_.height.high, Unit::millimetre) + ", made for " + base::or_list(wanted_.systems));
    if (wanted_.measured)
      answer_.holds("A measured old cell is an upper bound: it swells and carries crust. Measure the well as well.");
  }

  /// The systems that a watch of this voltage can want. Without a voltage it is taken for what most were made for: to take it
  /// for an alkaline one would let alkaline in a watch that wants silver.
  void find_systems(const std::optional<Amount>& volts) {
    constexpr double kNear = 0.02;  // V
    if (!volts) {
      wanted_.systems = {"silver-oxide", "lithium-manganese"};
      voltage_known_ = false;
      answer_.lacks("voltage");
      answer_.holds("No voltage was given: taken as made for silver, or for lithium of 3 V. Read the mark on the old cell.");
    }
    for (const auto& letter : ask_.row_keys("cell-systems")) {
      const auto nominal = ask_.row_if_any("cell-systems", letter, "nominal", Unit::volt);
      const std::string system = ask_.row_word("cell-systems", letter, "system");
      const bool near = nominal && volts && std::abs(nominal->nominal - volts->nominal) <= kNear;
      if (!near || system == "zinc-air") continue;
      wanted_.systems.push_back(system);
      wanted_.voltage = detail::resting_on({wanted_.voltage, *volts, *nominal});
    }
  }

  /// The size that the table has for what was measured, where no cell found is of it; else empty.
  std::string size_not_on_file(const std::vector<Candidate>& found) const {
    if (!wanted_.measured) return {};
    const bool on_file =
        std::any_of(found.begin(), found.end(), [](const Candidate& one) { return one.item.size == Code::same_size; });
    return on_file ? std::string() : standards::size_by_limits(*wanted_.measured, ask_.tables());
  }

  void name_size(const std::vector<Candidate>& found) {
    const std::string size = size_not_on_file(found);
    if (size.empty()) return;
    const auto width = ask_.row_if_any("cell-size-limits", size, "diameter-max", Unit::millimetre);
    const auto height = ask_.row_if_any("cell-size-limits", size, "height-max", Unit::millimetre);
    if (!width || !height) return;
    answer_.decide("size", Code::not_known,
                   size + ", " + shown(*width, Unit::millimetre) + " by " + shown(*height, Unit::millimetre) +
                       " at most: no cell of this size is on file; those below are of another",
                   detail::resting_on({*width, *height}));
    answer_.lacks("cell-of-this-size");
  }

  /// Cells of 1.5 V and of 3 V have this size: none may be used before the mark on the old one is read.
  void ask_for_voltage(std::vector<Candidate>& found) {
    for (auto& candidate : found) {
      if (candidate.item.verdict == Code::never) continue;
      candidate.reason = "only where the old cell says " + candidate.item.voltage.printed + "; then " +
                         std::string(code_text(candidate.item.verdict)) + ": " + candidate.reason;
      candidate.item.verdict = Code::voltage_not_known;
    }
    answer_.warn("",
                 "Cells of two voltages have this size, and 3 V destroys a module made for 1.5 V: read the mark on the old cell "
                 "and give voltage=.");
  }

  void read_drain() {
    const std::string lamp = ask_.choice("lamp", {"yes", "no"}, "");
    const std::string alarm = ask_.choice("alarm", {"yes", "no"}, "");
    bool heavy = lamp == "yes" || alarm == "yes";
    if (ask_.has("load") && !ask_.failed()) {
      const Amount load = ask_.amount("load", Unit::microampere, kLoad);
      const Amount peak = ask_.row("bench-rules", "peak-high-drain", "value", Unit::microampere);
      if (ask_.failed()) return;
      heavy = heavy || load.high >= peak.nominal;
      wanted_.low_drain = !heavy;
      wanted_.high_drain = heavy;
    }
    if (lamp.empty() && alarm.empty()) return;
    if (heavy || (lamp == "no" && alarm != "yes")) {
      wanted_.high_drain = heavy;
      wanted_.low_drain = !heavy;
    }
  }

  void list(const std::vector<Candidate>& found) {
    answer_.formula("size first, then system, then drain; limits by the tables cell-substitutes and bench-rules",
                    "usage of the trade", model::Trust::trade);
    std::size_t place = 0;
    for (const auto& candidate : found) {
      if (++place > kMostShown) break;
      const std::string verdict(code_text(candidate.item.verdict));
      Output& output = answer_.decide("candidate", candidate.item.verdict, verdict + ": " + candidate.reason, candidate.rests_on);
      output.record = candidate.item.record;
      output.name = "candidate." + model::RecordRef(output.record).id();
      output.label = candidate.item.name;
      answer_.add(candidate.item);
    }
    if (found.size() > kMostShown) answer_.holds("More cells are as large and are left out: the list is cut after the best.");
  }

  void cautions(const std::vector<Candidate>& found) {
    const auto is_test = [](const Candidate& one) { return one.item.verdict == Code::bench_test_only; };
    if (std::any_of(found.begin(), found.end(), is_test))
      answer_.caution("", "A cell for the bench test comes out again the same day.");
    if (std::find(wanted_.systems.begin(), wanted_.systems.end(), "mercuric-oxide") != wanted_.systems.end())
      answer_.beware(ask_.caution("cell-swap mercury"));
    if (wanted_.in_series > 1) answer_.holds("A stack is replaced by a stack of as many cells.");
    answer_.beware(ask_.caution("cell-swap abuse"));
    answer_.caution("", "Open voltage does not tell alkaline from silver: read the mark on the cell.");
    answer_.holds("Size by the largest measures of each record; a taller cell is never forced in.");
  }

  Ask& ask_;
  Answer& answer_;
  Wanted wanted_;
  bool voltage_known_ = true;
};

Result cell_swap(const Inputs& inputs, const Context& context) {
  return calculate<Swap>(cell_swap_calculator(), inputs, context);
}

}  // namespace

Calculator cell_swap_calculator() {
  return {kName,
          "which cells go in place of one",
          {{"cell", "a cell of the handbook, by designation or number", "sr754w", false},
           {"diameter", "measured, instead of a cell", "7.9 mm", false},
           {"height", "measured, instead of a cell", "5.4 mm", false},
           {"measured", "what was measured: old-cell or well", "well", false},
           {"voltage", "of the old cell, by its mark", "1.55 V", false},
           {"load", "largest current that the watch draws", "10 mA", false},
           {"lamp", "whether the watch has one", "yes", false},
           {"alarm", "whether the watch has one", "no", false},
           {"module", "the module it goes into", "lcd-no-lamp", false},
           {"charging", "what charges the cell in the watch: none, light or motion", "none", false}},
          cell_swap,
          {{"candidate", ""}, {"size", "measured size"}},
          "cell; or diameter and height, and voltage where it is known"};
}

}  // namespace benchleaf::bench
