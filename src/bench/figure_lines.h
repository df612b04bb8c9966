#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "model/fact.h"

namespace benchleaf::bench {

/// What records say, as lines of plain text for a page that reads no YAML: one line a figure, its parts between tabs. They
/// follow the lines of the tables in one text.
std::string figure_lines(const model::FactBase& figures);

/// The figures of such a text; nothing for a text that is none.
std::optional<model::FactBase> read_figure_lines(std::string_view text);

/// Where the figures begin in a text of tables and figures; its end where there are none.
std::size_t figures_start(std::string_view text);

}  // namespace benchleaf::bench
