#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "bench/calculator.h"
#include "model/tables.h"

namespace benchleaf::bench {

/// A calculator with its inputs as text: the name on the first line, then `key=value`, one a line.
struct Request {
  std::string name;
  Inputs inputs;
};

/// Reads a request; the line that is no `key=value` comes back where there is one.
std::pair<Request, std::optional<std::string>> read_request(std::string_view text);

/// What the page's calculators look into.
struct Library {
  model::Tables tables;
  model::FactBase figures;
  std::string fault;  ///< why it could not be read, or empty
};

/// Reads tables in their line format (standards/table_lines.h) and behind them, where there are any, the figures of records
/// in theirs (bench/figure_lines.h).
Library read_library(std::string_view lines);

/// Answers a request; an empty one asks for the list of calculators. Whatever is wrong is said in the answer.
std::string answer_request(const Library& library, std::string_view request, Form form);

}  // namespace benchleaf::bench
