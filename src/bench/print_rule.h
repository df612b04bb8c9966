#pragma once

#include <string>
#include <string_view>

#include "base/number.h"
#include "bench/result.h"

namespace benchleaf::bench {

/// How one output of one calculator is printed: a line of outputs.def.
struct PrintRule {
  std::string_view calculator;
  std::string_view output;
  std::string_view label;
  int decimals = 0;
  double from = 0;
  int decimals_from = 0;
  base::Rounding rounding = base::Rounding::half_away;
  base::Trailing trailing = base::Trailing::keep;
};

/// `decimals` of an output that is words.
inline constexpr int kWords = -1;

/// The rule of an output, or nullptr where outputs.def has none.
const PrintRule* print_rule(std::string_view calculator, std::string_view output);

/// A value rounded as its rule says: the one place where a result is rounded.
std::string figure(const PrintRule& rule, double value);

/// An output with its label and nothing else; the name must stand in outputs.def.
Output make_output(std::string_view calculator, std::string_view name);

}  // namespace benchleaf::bench
