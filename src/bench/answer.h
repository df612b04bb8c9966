#pragma once

#include <string>
#include <string_view>
#include <utility>

#include "base/unit.h"
#include "bench/amount.h"
#include "bench/items.h"
#include "bench/result.h"

namespace benchleaf::bench {

/// Puts a result together. An output takes the trust of its amount and of the formula that stands last before it.
class Answer {
 public:
  explicit Answer(std::string_view calculator) { result_.calculator = std::string(calculator); }

  /// The formula of the outputs that follow.
  void formula(std::string text, std::string source, model::Trust trust);
  /// A figure with its ends where it has some: `2.74 % (1.63 to 3.89 %)`. Rounded once, as the calculator declares it.
  Output& put(std::string_view name, const Amount& amount, base::Unit unit);
  /// A whole number of things: `18 swabs`.
  Output& count(std::string_view name, const Amount& amount, std::string_view things);
  /// Words, or a text that is printed as it is.
  Output& say(std::string_view name, std::string words, const Amount& rests_on);
  /// A decision: its code, and the words that say it.
  Output& decide(std::string_view name, Code code, std::string words, const Amount& rests_on);

  /// The output that was put last.
  Output& last() { return result_.outputs.back(); }

  void add(CellItem item) { result_.cells.push_back(std::move(item)); }
  void add(Rung item) { result_.rungs.push_back(std::move(item)); }
  void add(SizeItem item) { result_.sizes.push_back(std::move(item)); }
  void lacks(std::string what, std::string subject = {}) { result_.not_known.push_back({std::move(what), std::move(subject)}); }

  void step(std::string line) { result_.working.push_back(std::move(line)); }
  void holds(std::string line) { result_.range.push_back(std::move(line)); }
  /// For what can hurt nobody.
  void caution(std::string record, std::string text) { result_.cautions.push_back({std::move(record), std::move(text), false}); }
  /// For what can hurt somebody: stands before the figures.
  void warn(std::string record, std::string text) { result_.cautions.push_back({std::move(record), std::move(text), true}); }
  /// A caution of the handbook.
  void beware(Caution caution) { result_.cautions.push_back(std::move(caution)); }
  /// Says which missing tolerance makes the answer nominal only.
  void nominal_only(const Amount& amount, std::string_view missing);

  Result done() { return std::move(result_); }

 private:
  Output& add(std::string_view name, const Amount& amount);

  Result result_;
};

/// A figure of an item, printed with so many digits at most.
Figure figure_of(const Amount& amount, int decimals, base::Unit unit);

/// A figure for the working, set for paper: `31.85 mm`.
std::string shown(double value, int decimals, base::Unit unit);
/// The same as short as it can be.
std::string shown(double value, base::Unit unit);
/// As it was written, else its nominal as short as it can be.
std::string shown(const Amount& amount, base::Unit unit);

}  // namespace benchleaf::bench
