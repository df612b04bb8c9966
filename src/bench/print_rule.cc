// In: what the calculators declare. Out: figures with the digits that each output is printed with.

#include "bench/print_rule.h"

#include <cmath>

namespace benchleaf::bench {

const OutputInfo* print_rule(std::string_view calculator, std::string_view output) {
  for (const auto& one : calculators()) {
    if (one.name != calculator) continue;
    for (const auto& rule : one.outputs) {
      if (rule.name == output) return &rule;
    }
  }
  return nullptr;
}

std::string figure(const OutputInfo& rule, double value) {
  const bool large = rule.from > 0 && std::abs(value) >= rule.from;
  return base::fixed_text(value, large ? rule.decimals_from : rule.decimals, rule.trailing, rule.rounding);
}

Output make_output(std::string_view calculator, std::string_view name) {
  Output output;
  output.name = std::string(name);
  const OutputInfo* rule = print_rule(calculator, name);
  if (rule != nullptr) output.label = std::string(rule->label);
  return output;
}

}  // namespace benchleaf::bench
