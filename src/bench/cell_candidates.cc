// In: the place of a cell. Out: the cells that fit it, judged by size, system and drain; ranked.

#include "bench/cell_candidates.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>
#include <variant>

#include "base/number.h"
#include "bench/answer.h"
#include "standards/designation.h"
#include "standards/table_view.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::array<Code, 4> kVerdicts = {Code::use, Code::with_care, Code::bench_test_only, Code::never};
constexpr int kWrongDrain = 1;  // added to a rank that counts in tens
constexpr int kSwollen = 2;
constexpr int kSpacer = 5;
constexpr int kVerdictStep = 10;
constexpr double kSlip = 1e-9;         // of binary fractions
constexpr double kOtherVoltage = 0.5;  // V: 1.35, 1.5 and 1.55 V are of one kind, 3 V is another

/// Limits of size, mm.
struct Limits {
  Amount narrower, same_height, spacer, swelling;
};

/// 0 is best; what is no verdict on a cell comes behind all that are.
int place_of(Code verdict) {
  const auto at = std::find(kVerdicts.begin(), kVerdicts.end(), verdict);
  return static_cast<int>(at - kVerdicts.begin());
}

Figure lower_by(double millimetres, const Amount& rests_on) {
  Amount lower = exactly(base::tidy(millimetres));
  lower.trust = rests_on.trust;
  return figure_of(lower, 2, Unit::millimetre);
}

/// Judges one cell; nothing where its size rules it out.
class Judge {
 public:
  Judge(Ask& ask, const Wanted& wanted) : ask_(ask), wanted_(wanted) {
    limits_ = {length("cell-diameter-slack"), length("cell-height-same"), length("cell-height-spacer"), length("cell-swelling")};
  }

  std::optional<Candidate> judge(const std::string& cell) {
    const auto diameter = ask_.stated(cell, "size.diameter", Unit::millimetre);
    const auto height = ask_.stated(cell, "size.height", Unit::millimetre);
    const std::string designation = ask_.word(cell, "designation");
    if (!diameter || !height || cells_in_series(designation) != wanted_.in_series) return std::nullopt;
    Candidate candidate;
    candidate.item.record = cell;
    const std::string number = ask_.word(cell, "trade-number");
    candidate.item.name = designation + (number.empty() ? "" : " (" + number + ")");
    candidate.rests_on = detail::resting_on({*diameter, *height, wanted_.diameter, wanted_.height});
    const bool fits = wanted_.measured ? fit_measured({diameter->high, height->high}, candidate)
                                       : fit_place({diameter->high, height->high}, candidate);
    if (!fits) return std::nullopt;
    judge_system(cell, candidate);
    candidate.why += size_words(candidate);
    candidate.reason = candidate.item.size == Code::same_size ? "same size, " : "fits, ";
    candidate.reason += (candidate.item.system == Code::same_system ? "same system; " : "OTHER system; ") + candidate.why;
    candidate.item.trust = candidate.rests_on.trust;
    return candidate;
  }

 private:
  Amount length(const char* rule) { return ask_.row("bench-rules", rule, "value", Unit::millimetre); }

  /// The figures of what it rests on stay as they are.
  static void rest_on(const std::vector<Amount>& more, Candidate& candidate) {
    std::vector<Amount> all = {candidate.rests_on};
    all.insert(all.end(), more.begin(), more.end());
    const Amount together = detail::resting_on(all);
    candidate.rests_on.trust = together.trust;
    candidate.rests_on.facts = together.facts;
  }

  /// A cell in the place of a cell, or in a well: by the largest measures of both.
  bool fit_place(const standards::CellSize& cell, Candidate& candidate) const {
    const double narrower = wanted_.diameter.high - cell.diameter;
    const double lower = wanted_.height.high - cell.height;
    const double same_size = limits_.same_height.nominal + kSlip;
    if (narrower < -same_size || narrower > limits_.narrower.nominal + kSlip) return false;
    if (lower < -same_size || lower > limits_.spacer.nominal + kSlip) return false;
    candidate.misfit = std::abs(narrower) + std::abs(lower);
    const bool same = std::abs(narrower) <= same_size && std::abs(lower) <= same_size;
    candidate.item.size = same ? Code::same_size : Code::fits;
    // No limit has a say where the measures are the same.
    if (candidate.misfit > kSlip) rest_on({limits_.same_height}, candidate);
    if (std::abs(narrower) > same_size) rest_on({limits_.narrower}, candidate);
    if (lower > same_size) needs_spacer(lower, candidate);
    return true;
  }

  /// A cell that the measured one can be: between the limits of its size, or smaller by what old ones swell.
  bool fit_measured(const standards::CellSize& cell, Candidate& candidate) const {
    const standards::MeasuredCell& measured = *wanted_.measured;
    const standards::CellLimits limits = standards::cell_limits(cell, ask_.tables());
    candidate.misfit = std::abs(measured.diameter.nominal - cell.diameter) + std::abs(measured.height.nominal - cell.height);
    if (const auto least = ask_.row_if_any("cell-size-limits", limits.row, "height-min", Unit::millimetre))
      rest_on({*least}, candidate);
    const double swelling = limits_.swelling.nominal;
    switch (standards::measured_fit(measured, limits, swelling)) {
      case standards::MeasuredFit::within: candidate.item.size = Code::same_size; return true;
      case standards::MeasuredFit::oversize:
        rest_on({limits_.swelling}, candidate);
        candidate.item.size = Code::fits;
        candidate.size_rank = kSwollen;
        return true;
      case standards::MeasuredFit::no: break;
    }
    const double lower = measured.height.nominal - limits.height_max;
    const bool wide_enough = standards::measured_fit({measured.diameter, {cell.height, cell.height, cell.height}}, limits,
                                                     swelling) != standards::MeasuredFit::no;
    if (!wide_enough || lower <= 0 || lower > limits_.spacer.nominal + kSlip) return false;
    needs_spacer(measured.height.nominal - cell.height, candidate);
    return true;
  }

  void needs_spacer(double lower, Candidate& candidate) const {
    rest_on({limits_.spacer}, candidate);
    candidate.item.size = Code::needs_spacer;
    candidate.item.lower = lower_by(lower, candidate.rests_on);
    candidate.size_rank = kSpacer;
  }

  std::string size_words(const Candidate& candidate) const {
    if (candidate.item.size == Code::needs_spacer)
      return "; lower by " + candidate.item.lower.printed + ": with a spacer or a firmer contact";
    if (candidate.size_rank == kSwollen) return "; smaller than measured, as a new cell is against one that has swollen";
    return {};
  }

  /// The most favourable of the systems that the watch may have been made for.
  void judge_system(const std::string& cell, Candidate& candidate) {
    const std::string system = ask_.word(cell, "system");
    candidate.item.verdict = Code::never;
    candidate.why = "another voltage: 3 V destroys a module made for 1.5 V, 1.5 V does not run one made for 3 V";
    if (same_voltage(system)) candidate.why = "no rule lets " + system + " in its place";
    rest_on({wanted_.voltage}, candidate);
    for (const auto& wanted : wanted_.systems) {
      const std::string pair = wanted + " " + system;
      const Code verdict = code_named(ask_.row_word("cell-substitutes", pair, "verdict"));
      if (verdict == Code::none || place_of(verdict) > place_of(candidate.item.verdict)) continue;
      candidate.item.verdict = verdict;
      candidate.wanted_rank = static_cast<int>(&wanted - wanted_.systems.data());
      candidate.why = ask_.row_word("cell-substitutes", pair, "reason");
      candidate.rests_on.facts.push_back("table/cell-substitutes#" + pair + ".verdict");
      if (const auto* row = standards::row_of(ask_.tables(), "cell-substitutes", pair))
        candidate.rests_on.trust = model::weaker(candidate.rests_on.trust, row->trust);
    }
    // Where the leaf does not reach a lower cell, the spacer must be right.
    if (candidate.item.size == Code::needs_spacer && candidate.item.verdict == Code::use)
      candidate.item.verdict = Code::with_care;
    candidate.item.system = is_of_wanted(system) ? Code::same_system : Code::other_system;
    if (ask_.word(cell, "status") == "withdrawn" && candidate.item.verdict != Code::never) {
      candidate.item.verdict = Code::never;
      candidate.why += "; withdrawn";
    }
    if (candidate.item.verdict == Code::never) rest_on_voltages(system, candidate);
    add_voltage(system, candidate);
    candidate.rank = kVerdictStep * place_of(candidate.item.verdict) + candidate.size_rank;
    if (candidate.item.verdict != Code::never) judge_drain(cell, system, candidate);
  }

  void judge_drain(const std::string& cell, const std::string& system, Candidate& candidate) {
    const std::string drain = ask_.word(cell, "drain");
    if (drain == "low" && wanted_.high_drain) {
      if (candidate.item.verdict == Code::use) candidate.item.verdict = Code::with_care;
      candidate.item.drain = Code::low;
      candidate.why += "; low drain: it sags under lamp or alarm";
      candidate.rank = kVerdictStep * place_of(candidate.item.verdict) + candidate.size_rank + kWrongDrain;
    } else if (drain == "high" && wanted_.low_drain) {
      candidate.item.drain = Code::high;
      candidate.why += "; high drain: safe, and loses more by itself, so low drain is better here";
      candidate.rank += kWrongDrain;
    } else if ((drain == "low" || drain == "high") && system == "silver-oxide") {
      candidate.why += "; " + drain + " drain";
    }
  }

  bool is_of_wanted(const std::string& system) const {
    return std::find(wanted_.systems.begin(), wanted_.systems.end(), system) != wanted_.systems.end();
  }

  void add_voltage(const std::string& system, Candidate& candidate) const {
    const auto volts = voltage(system);
    if (!volts) return;
    Amount amount = *volts;
    amount.trust = model::weaker(amount.trust, candidate.rests_on.trust);
    candidate.item.voltage = figure_of(amount, 2, Unit::volt);
  }

  std::optional<Amount> voltage(const std::string& system) const {
    for (const auto& letter : ask_.row_keys("cell-systems")) {
      if (ask_.row_word("cell-systems", letter, "system") != system) continue;
      if (const auto nominal = ask_.row_if_any("cell-systems", letter, "nominal", Unit::volt)) return nominal;
    }
    return std::nullopt;
  }

  /// What is never used for its voltage rests on both.
  void rest_on_voltages(const std::string& system, Candidate& candidate) const {
    std::vector<std::string> systems = wanted_.systems;
    systems.push_back(system);
    for (const auto& one : systems) {
      if (const auto volts = voltage(one)) rest_on({*volts}, candidate);
    }
  }

  bool same_voltage(const std::string& system) const {
    const auto own = voltage(system);
    return own && std::any_of(wanted_.systems.begin(), wanted_.systems.end(), [&](const std::string& wanted) {
             const auto other = voltage(wanted);
             return other && std::abs(own->nominal - other->nominal) < kOtherVoltage;
           });
  }

  Ask& ask_;
  const Wanted& wanted_;
  Limits limits_;
};

}  // namespace

int cells_in_series(const std::string& designation) {
  const auto parsed = standards::parse_designation(designation);
  const auto* read = std::get_if<standards::Designation>(&parsed);
  return read == nullptr ? 1 : read->in_series;
}

std::vector<Candidate> find_candidates(Ask& ask, const Wanted& wanted) {
  std::vector<Candidate> found;
  Judge judge(ask, wanted);
  for (const auto& cell : ask.records("cell")) {
    auto candidate = judge.judge(cell);
    if (candidate) found.push_back(std::move(*candidate));
  }
  std::stable_sort(found.begin(), found.end(), [](const Candidate& one, const Candidate& other) {
    if (one.rank != other.rank) return one.rank < other.rank;
    if (one.wanted_rank != other.wanted_rank) return one.wanted_rank < other.wanted_rank;
    return one.misfit < other.misfit - 1e-9;
  });
  return found;
}

Wanted place_of_cell(Ask& ask, const std::string& cell) {
  Wanted place;
  place.cell = cell;
  place.diameter = ask.needed("cell", cell, "size.diameter", Unit::millimetre);
  place.height = ask.needed("cell", cell, "size.height", Unit::millimetre);
  place.systems = {ask.word(cell, "system")};
  place.in_series = cells_in_series(ask.word(cell, "designation"));
  place.low_drain = ask.word(cell, "drain") == "low";
  place.high_drain = ask.word(cell, "drain") == "high";
  return place;
}

std::vector<Candidate> judge_in_place(const std::string& cell, const std::vector<std::string>& others, const Context& context) {
  static const Calculator kNone{};
  const Inputs inputs;
  Ask ask(kNone, inputs, context);
  const Wanted place = place_of_cell(ask, cell);
  std::vector<Candidate> found;
  if (ask.failed()) return found;
  Judge judge(ask, place);
  for (const std::string& other : others) {
    auto candidate = judge.judge(other);
    if (candidate) found.push_back(std::move(*candidate));
  }
  return found;
}

std::string place_words(Code verdict) { return verdict == Code::none ? "does not fit" : std::string(code_text(verdict)); }

bool voltages_differ(const std::vector<Candidate>& found) {
  std::optional<double> first;
  for (const auto& candidate : found) {
    const auto& volts = candidate.item.voltage.value;
    if (candidate.item.verdict == Code::never || !volts) continue;
    if (first && std::abs(*first - *volts) >= kOtherVoltage) return true;
    first = first.value_or(*volts);
  }
  return false;
}

}  // namespace benchleaf::bench
