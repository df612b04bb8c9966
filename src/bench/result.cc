// In: the parts of a result. Out: look-ups in it.

#include "bench/result.h"

#include <utility>

namespace benchleaf::bench {

const Output* Result::find(std::string_view name) const {
  for (const auto& output : outputs) {
    if (output.name == name) return &output;
  }
  return nullptr;
}

Code Result::code(std::string_view name) const {
  const Output* output = find(name);
  return output == nullptr ? Code::none : output->code;
}

Result refused(std::string calculator, Refusal refusal) {
  Result result;
  result.calculator = std::move(calculator);
  result.refusal = std::move(refusal);
  return result;
}

std::string written(const Result& result, Form form) { return form == Form::json ? result_json(result) : result_text(result); }

}  // namespace benchleaf::bench
