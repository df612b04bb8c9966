// In: outputs.def. Out: figures with the digits that each output is printed with.

#include "bench/print_rule.h"

#include <cmath>

namespace benchleaf::bench {
namespace {

using enum base::Rounding;
using enum base::Trailing;

constexpr PrintRule kRules[] = {
#define BENCHLEAF_OUTPUT(calculator, output, label, decimals, from, decimals_from, rounding, trailing) \
  {calculator, output, label, decimals, from, decimals_from, rounding, trailing},
#include "bench/outputs.def"
#undef BENCHLEAF_OUTPUT
};

}  // namespace

const PrintRule* print_rule(std::string_view calculator, std::string_view output) {
  for (const auto& rule : kRules) {
    if (rule.calculator == calculator && rule.output == output) return &rule;
  }
  return nullptr;
}

std::string figure(const PrintRule& rule, double value) {
  const bool large = rule.from > 0 && std::abs(value) >= rule.from;
  return base::fixed_text(value, large ? rule.decimals_from : rule.decimals, rule.trailing, rule.rounding);
}

Output make_output(std::string_view calculator, std::string_view name) {
  Output output;
  output.name = std::string(name);
  const PrintRule* rule = print_rule(calculator, name);
  if (rule != nullptr) output.label = std::string(rule->label);
  return output;
}

}  // namespace benchleaf::bench
