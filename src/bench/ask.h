#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "bench/amount.h"
#include "bench/calculator.h"

namespace benchleaf::bench {

/// Figures outside these are slips of the pen, both in the unit that is asked for.
struct Plausible {
  double least = 0;
  double most = 0;
};

/// Reads the inputs of one run, and what records and tables say about them. The first fault is kept: from then on every
/// question answers nothing, and the run ends with `refused()`.
class Ask {
 public:
  Ask(const Calculator& calculator, const Inputs& inputs, const Context& context)
      : calculator_(calculator), inputs_(inputs), context_(context) {}

  /// For a calculator that asks another one.
  const Context& context() const { return context_; }
  bool has(std::string_view input) const { return inputs_.find(input) != inputs_.end(); }
  /// The text of an input, or empty.
  std::string text(std::string_view input) const;
  /// A typed quantity in `unit`, within what is plausible.
  Amount amount(std::string_view input, base::Unit unit, Plausible plausible);
  /// The same of a unit that knows no minus, with one in front: seconds slow.
  Amount signed_amount(std::string_view input, base::Unit unit, Plausible plausible);
  /// The same as it was read off, in mm, with half of its last place to either side.
  base::Interval reading(std::string_view input) const;
  const model::Tables& tables() const { return context_.tables; }
  /// One of some words, or `otherwise` where the input is missing.
  std::string choice(std::string_view input, const std::vector<std::string>& words, const std::string& otherwise);

  /// The record that an input names, `kind/id`: by id, by `kind/id`, or by designation or trade number for cells; the
  /// kinds are tried in their order. A name that none has is a fault.
  std::string record(std::string_view input, const std::vector<std::string>& kinds);
  /// What a record states, in `unit`; nothing where it does not. Paths as in facts: `size.diameter`.
  std::optional<Amount> stated(const std::string& record, const std::string& path, base::Unit unit) const;
  /// The same, a fault of `input` where the record does not say.
  Amount needed(std::string_view input, const std::string& record, const std::string& path, base::Unit unit);
  /// A word or a reference (`kind/id`) that a record states, or empty.
  std::string word(const std::string& record, const std::string& path) const;
  /// The title of a record, else its id.
  std::string title(const std::string& record) const;
  /// All records of a kind, `kind/id`, in their order.
  std::vector<std::string> records(std::string_view kind) const;

  /// A cell of a published table, in `unit`; a fault of the tables where it is missing.
  Amount row(const std::string& table, const std::string& key, const std::string& column, base::Unit unit);
  /// The same, nothing where it is missing or states none.
  std::optional<Amount> row_if_any(const std::string& table, const std::string& key, const std::string& column,
                                   base::Unit unit) const;
  std::string row_word(const std::string& table, const std::string& key, const std::string& column) const;
  /// The caution that the table calculator-cautions has under this key; a fault of the tables where it is missing.
  Caution caution(const std::string& key);
  /// The keys of a table in its order.
  std::vector<std::string> row_keys(const std::string& table) const;
  const model::PublishedTable* table(const std::string& name) const;

  /// Keeps a fault, unless there is one already. An empty input is none of the user's.
  void fail(std::string_view input, std::string reason, std::string hint = {});
  /// How figures were taken that were typed without their unit.
  const std::vector<std::string>& notes() const { return notes_; }
  bool failed() const { return refusal_.has_value(); }
  Result refused() const;

 private:
  Amount read(std::string_view input, const Given& given, base::Unit unit, Plausible plausible);
  std::optional<Amount> of_fact(const std::string& id, base::Unit unit) const;

  const Calculator& calculator_;
  const Inputs& inputs_;
  const Context& context_;
  std::optional<Refusal> refusal_;
  std::vector<std::string> notes_;
};

}  // namespace benchleaf::bench
