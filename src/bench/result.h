#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bench/items.h"
#include "model/fact.h"

namespace benchleaf::bench {

/// One answer of a calculator, told by `code` and `record` where it decides something. `printed` is rounded once, by the step
/// that the calculator declares for it.
struct Output {
  std::string name;                 ///< `height`, as in the fact id `cell/sr754w#cell-decode.height`
  std::string label;                ///< words in front of the value: `height`
  std::optional<double> value;      ///< nominal, in `unit`; none for words
  std::optional<double> low, high;  ///< ends of an interval, in `unit`
  std::string unit;
  Code code = Code::none;  ///< the decision, where it is one
  std::string record;      ///< `kind/id` that it speaks of, where it speaks of one
  std::string printed;     ///< as set on paper: thin spaces, U+2212 minus; written last, from the above
  model::Trust trust = model::Trust::memory;
  std::vector<std::string> inputs;  ///< ids of the facts it rests on; table rows are `table/NAME#row.column`
  std::string formula;              ///< the formula with its source, in one line, as Fact::source carries it
};

/// A formula in words and symbols, and where it is published.
struct Formula {
  std::string text;
  std::string source;
  model::Trust trust = model::Trust::memory;
};

/// What the user must know beside the answer. `record` is `caution/ID` where the handbook has one, else empty.
struct Caution {
  std::string record;
  std::string text;
  bool first = false;  ///< somebody could be hurt: it stands before the figures
};

/// A fact that an answer rests on: id, as printed, and how far it can be trusted.
struct Ground {
  std::string fact;
  std::string printed;
  model::Trust trust = model::Trust::memory;
};

/// Why there is no answer: the input at fault (or empty), the reason, and one action (or empty).
struct Refusal {
  std::string input;
  std::string reason;
  std::string hint;
  bool show_example = false;  ///< the form of the input is at fault or it is missing: one written well helps
};

/// An input in the form of a calculator: what it takes, and whether it was given.
struct FormLine {
  std::string name, what, example;
  bool required = false;
  bool given = false;
};

/// The answer of any calculator. With a refusal set, outputs are empty; working may say how far it came.
struct Result {
  std::string calculator;
  std::vector<Output> outputs;
  std::vector<CellItem> cells;       ///< candidates for a place, best first
  std::vector<Rung> rungs;           ///< of a ladder, coarsest first
  std::vector<SizeItem> sizes;       ///< of a series, the chosen one first
  std::vector<HazardItem> hazards;   ///< classes of a mixture
  std::vector<NotKnown> not_known;   ///< what the answer lacks
  std::vector<std::string> working;  ///< one line a step, in the order it was reckoned, as set on paper
  std::vector<Formula> formulas;
  std::vector<std::string> range;  ///< for what the answer holds, or that a missing tolerance makes it nominal only
  std::vector<Caution> cautions;
  std::vector<Ground> grounds;  ///< all facts of records and tables that the outputs name, each once; filled by `reckon`
  std::optional<Refusal> refusal;
  std::vector<FormLine> form;  ///< all inputs, where one that is needed is missing

  /// The output of this name, or nullptr.
  const Output* find(std::string_view name) const;
  /// The decision of an output, `none` where there is no such output.
  Code code(std::string_view name) const;
};

/// A result that only says why there is none.
Result refused(std::string calculator, Refusal refusal);

/// The whole result as lines of text, the same at the terminal and in the page: `-` for minus, plain spaces, a line end
/// after each line.
std::string result_text(const Result& result);
/// The same as one JSON object: calculator, cautions (those that stand before the figures first), outputs, working,
/// formulas, grounds, holds, refusal (null where there is none), and the items: cells, rungs, sizes, hazards, not-known.
std::string result_json(const Result& result);

/// How an answer is written.
enum class Form { text, json };
std::string written(const Result& result, Form form);

}  // namespace benchleaf::bench
