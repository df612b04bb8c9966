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

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::array<Code, 4> kVerdicts = {Code::use, Code::with_care, Code::bench_test_only, Code::never};
constexpr int kWrongDrain = 1;  // added to a rank that counts in tens
constexpr int kSpacer = 3;
constexpr int kVerdictStep = 10;

/// Limits of size, mm.
struct Limits {
  double narrower = 0, same_height = 0, spacer = 0, swelling = 0;
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
    const double narrower = wanted_.diameter.high - diameter->high;
    const double lower = wanted_.height.high - height->high;
    const double widest = wanted_.upper_bound ? std::max(limits_.narrower, limits_.swelling) : limits_.narrower;
    if (narrower < -limits_.same_height - 1e-9 || narrower > widest + 1e-9) return std::nullopt;
    if (lower < -limits_.same_height - 1e-9) return std::nullopt;
    const double as_tall = wanted_.upper_bound ? limits_.swelling : limits_.same_height;
    if (lower > std::max(limits_.spacer, as_tall) + 1e-9) return std::nullopt;
    candidate.misfit = std::abs(narrower) + std::abs(lower);
    judge_system(cell, candidate);
    const bool same = std::abs(narrower) <= limits_.same_height + 1e-9 && std::abs(lower) <= limits_.same_height + 1e-9;
    candidate.item.size = same ? Code::same_size : Code::fits;
    candidate.reason = (same ? "same size, " : "fits, ") + candidate.reason;
    judge_height(lower, as_tall, candidate);
    candidate.item.trust = candidate.rests_on.trust;
    return candidate;
  }

 private:
  double length(const char* rule) { return ask_.row("bench-rules", rule, "value", Unit::millimetre).nominal; }

  void judge_height(double lower, double as_tall, Candidate& candidate) const {
    if (lower <= as_tall + 1e-9) return;
    candidate.item.size = Code::needs_spacer;
    candidate.item.lower = lower_by(lower, candidate.rests_on);
    candidate.reason += "; lower by " + shown(base::tidy(lower), 2, Unit::millimetre) + ": with a spacer or a firmer contact";
    candidate.rank += kSpacer;
  }

  /// The most favourable of the systems that the watch may have been made for.
  void judge_system(const std::string& cell, Candidate& candidate) {
    const std::string system = ask_.word(cell, "system");
    candidate.item.verdict = Code::never;
    candidate.reason = "another voltage: 3 V destroys a module made for 1.5 V, 1.5 V does not run one made for 3 V";
    if (same_voltage(system)) candidate.reason = "no rule lets " + system + " in its place";
    for (const auto& wanted : wanted_.systems) {
      const std::string pair = wanted + " " + system;
      const Code verdict = code_named(ask_.row_word("cell-substitutes", pair, "verdict"));
      if (verdict == Code::none || place_of(verdict) > place_of(candidate.item.verdict)) continue;
      candidate.item.verdict = verdict;
      candidate.reason = ask_.row_word("cell-substitutes", pair, "reason");
      candidate.rests_on.facts.push_back("table/cell-substitutes#" + pair + ".verdict");
    }
    candidate.item.system = is_of_wanted(system) ? Code::same_system : Code::other_system;
    candidate.reason = (is_of_wanted(system) ? "same system; " : "OTHER system; ") + candidate.reason;
    if (ask_.word(cell, "status") == "withdrawn" && candidate.item.verdict != Code::never) {
      candidate.item.verdict = Code::never;
      candidate.reason += "; withdrawn";
    }
    candidate.rank = kVerdictStep * place_of(candidate.item.verdict);
    if (candidate.item.verdict != Code::never) judge_drain(cell, system, candidate);
  }

  void judge_drain(const std::string& cell, const std::string& system, Candidate& candidate) {
    const std::string drain = ask_.word(cell, "drain");
    if (drain == "low" && wanted_.high_drain) {
      if (candidate.item.verdict == Code::use) candidate.item.verdict = Code::with_care;
      candidate.item.drain = Code::low;
      candidate.reason += "; low drain: it sags under lamp or alarm";
      candidate.rank = kVerdictStep * place_of(candidate.item.verdict) + kWrongDrain;
    } else if (drain == "high" && wanted_.low_drain) {
      candidate.item.drain = Code::high;
      candidate.reason += "; high drain: safe, and loses more by itself, so low drain is better here";
      candidate.rank += kWrongDrain;
    } else if ((drain == "low" || drain == "high") && system == "silver-oxide") {
      candidate.reason += "; " + drain + " drain";
    }
  }

  bool is_of_wanted(const std::string& system) const {
    return std::find(wanted_.systems.begin(), wanted_.systems.end(), system) != wanted_.systems.end();
  }

  std::optional<double> voltage(const std::string& system) const {
    for (const auto& letter : ask_.row_keys("cell-systems")) {
      if (ask_.row_word("cell-systems", letter, "system") != system) continue;
      const auto nominal = ask_.row_if_any("cell-systems", letter, "nominal", Unit::volt);
      if (nominal) return nominal->nominal;
    }
    return std::nullopt;
  }

  bool same_voltage(const std::string& system) const {
    constexpr double kNear = 0.5;  // V
    const auto own = voltage(system);
    return own && std::any_of(wanted_.systems.begin(), wanted_.systems.end(), [&](const std::string& wanted) {
             const auto other = voltage(wanted);
             return other && std::abs(*own - *other) < kNear;
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
    return one.misfit < other.misfit - 1e-9;
  });
  return found;
}

}  // namespace benchleaf::bench
