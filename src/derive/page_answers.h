#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bench/calculator.h"
#include "model/node.h"

namespace benchleaf::derive {

/// One question of a block of answers.
struct PageQuestion {
  std::vector<std::string> values;  ///< what the row itself gives, in the order of `PageAnswers::keys`
  std::string slug;                 ///< the same in a fact id: `20-mm`
  bench::Inputs inputs;             ///< those of the row and those of the whole block
};

/// What a page asks of a calculator in a fenced block:
///     show: reckoned
///     name: seats                      # stands in the ids of the facts
///     calculator: gasket-fit
///     with: { moving: "no" }           # inputs of every row, if any
///     rows: [{ seat: 20 mm }, { seat: 21 mm }]
///     columns: [least-inside, most-inside]
struct PageAnswers {
  std::string name;
  std::string calculator;
  std::vector<std::string> keys;     ///< inputs that the rows give, as the first row has them
  std::vector<std::string> columns;  ///< outputs
  std::vector<PageQuestion> rows;

  /// `page/gaskets#gasket-fit.seats.20-mm.least-inside`
  std::string fact_id(const std::string& page, const PageQuestion& row, const std::string& column) const;
};

/// Reads the body of a block; nothing where it asks for something else, lacks a part, or gives rows of unlike inputs.
std::optional<PageAnswers> read_page_answers(const model::Node& body);

}  // namespace benchleaf::derive
