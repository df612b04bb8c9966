// In: the name of a calculator and its inputs. Out: its result. The list below is the only place that knows them all.

#include "bench/calculator.h"

#include <algorithm>
#include <cstddef>

#include "base/id.h"
#include "bench/cell_decode.h"
#include "bench/mixture_class.h"

namespace benchleaf::bench {
namespace {

std::vector<std::string> calculator_names() {
  std::vector<std::string> names;
  for (const auto& calculator : calculators()) names.emplace_back(calculator.name);
  return names;
}

std::vector<std::string> input_names(const Calculator& calculator) {
  std::vector<std::string> names;
  for (const auto& input : calculator.inputs) names.emplace_back(input.name);
  return names;
}

std::string nearest_or_all(std::string_view word, const std::vector<std::string>& names) {
  const std::string nearest = base::nearest_word(word, names);
  return nearest.empty() ? "there is " + base::or_list(names) : "did you mean " + nearest + "?";
}

const Calculator* calculator_named(std::string_view name) {
  for (const auto& calculator : calculators()) {
    if (calculator.name == name) return &calculator;
  }
  return nullptr;
}

/// An input that the calculator does not take, or one that it needs and that is missing.
std::optional<Refusal> wrong_inputs(const Calculator& calculator, const Inputs& inputs) {
  const auto names = input_names(calculator);
  for (const auto& [name, given] : inputs) {
    if (std::find(names.begin(), names.end(), name) == names.end()) {
      return Refusal{name, "is no input of " + std::string(calculator.name), nearest_or_all(name, names)};
    }
  }
  for (const auto& input : calculator.inputs) {
    if (!input.required || inputs.find(input.name) != inputs.end()) continue;
    const std::string name(input.name);
    return Refusal{name, "is missing: " + std::string(input.what), "write " + name + "=" + std::string(input.example)};
  }
  return std::nullopt;
}

}  // namespace

const std::vector<Calculator>& calculators() {
  static const std::vector<Calculator> kAll = {cell_decode_calculator(), mixture_class_calculator()};
  return kAll;
}

Result reckon(std::string_view name, const Inputs& inputs, const Context& context) {
  const Calculator* calculator = calculator_named(name);
  if (calculator == nullptr) {
    return refused(std::string(name), {"", "there is no calculator of this name", nearest_or_all(name, calculator_names())});
  }
  if (auto refusal = wrong_inputs(*calculator, inputs)) return refused(std::string(name), std::move(*refusal));
  return calculator->run(inputs, context);
}

std::string calculators_text() {
  std::string text;
  for (const auto& calculator : calculators()) {
    text += std::string(calculator.name) + ": " + std::string(calculator.does) + "\n";
    for (const auto& input : calculator.inputs) {
      text += "  " + std::string(input.name) + "=" + std::string(input.example) + "  " + std::string(input.what) +
              (input.required ? "" : " (may be left out)") + "\n";
    }
  }
  return text;
}

}  // namespace benchleaf::bench
