#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/number.h"
#include "bench/names.h"
#include "bench/result.h"
#include "model/fact.h"

namespace benchleaf::model {
struct Tables;
struct PublishedTable;
}  // namespace benchleaf::model

namespace benchleaf::bench {

/// One input as it was typed, or taken from a fact: then `fact` names it and `trust` is the fact's.
struct Given {
  std::string text;
  model::Trust trust = model::Trust::given;
  std::string fact;
};
using Inputs = std::map<std::string, Given, std::less<>>;

/// What every calculator may look into.
struct Context {
  const model::Tables& tables;
  const model::FactBase& facts;  ///< for inputs that name a record: `cell=sr754w`
  const Names* names = nullptr;  ///< what resolves those names; without one the facts do
  /// Other words for every sentence of a result, or nullptr: with it a test shows that no sentence decides anything.
  std::string (*reword)(const std::string&) = nullptr;
};

/// An input as the list of calculators prints it.
struct InputInfo {
  std::string_view name;
  std::string_view what;
  std::string_view example;
  bool required = true;
};

/// `decimals` of an output that is words: it is printed as it is, and so is a value taken over from a table as written.
inline constexpr int kWords = -1;

/// An output with its print step: rounding happens here alone, on printing.
struct OutputInfo {
  std::string_view name;
  std::string_view label;                               ///< words in front of the value
  int decimals = kWords;                                ///< digits after the point
  base::Rounding rounding = base::Rounding::half_away;  ///< up or down for a safety figure that is rounded to the safe side
  double from = 0;  ///< values of this size and more are printed with `decimals_from` digits; 0: all alike
  int decimals_from = 0;
  base::Trailing trailing = base::Trailing::keep;
};

struct Calculator {
  std::string_view name;
  std::string_view does;  ///< one line
  std::vector<InputInfo> inputs;
  Result (*run)(const Inputs&, const Context&);
  std::vector<OutputInfo> outputs;
  std::string_view needs = {};  ///< what is needed where one input can stand for another: `depth or pressure`
};

/// All calculators that exist, by name.
const std::vector<Calculator>& calculators();

/// Runs one calculator. An unknown name, an unknown input and a missing input are refusals that name the nearest. An input
/// without a name is the first of the calculator.
Result reckon(std::string_view name, const Inputs& inputs, const Context& context);

/// The list that `reckon` without a name prints.
std::string calculators_text();
/// The same as JSON: {"calculators": [{name, does, inputs: [{name, what, example, required}]}]}.
std::string calculators_json();
/// One of the two.
std::string calculators_written(Form form);

}  // namespace benchleaf::bench
