// In: an output of a calculator. Out: the fact that it becomes.

#include "derive/fact_of_output.h"

#include <utility>

namespace benchleaf::derive {

model::Fact fact_of_output(bench::Output output, const std::string& record, const std::string& calculator) {
  model::Fact fact;
  fact.id = record + "#" + calculator + "." + output.name;
  fact.value = output.value;
  fact.low = output.low;
  fact.high = output.high;
  fact.unit = std::move(output.unit);
  fact.printed = std::move(output.printed);
  fact.trust = output.trust;
  fact.derived = true;
  fact.inputs = std::move(output.inputs);
  fact.source = std::move(output.formula);
  return fact;
}

}  // namespace benchleaf::derive
