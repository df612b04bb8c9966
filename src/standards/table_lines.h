#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/tables.h"

namespace benchleaf::standards {

/// Published tables as lines of plain text, for a page that has no YAML reader: one line an entry, its parts between tabs.
/// Places in files are left out.
std::string table_lines(const std::vector<model::PublishedTable>& tables);

/// The tables that such a text holds; nothing for a text that is none.
std::optional<std::vector<model::PublishedTable>> read_table_lines(std::string_view text);

}  // namespace benchleaf::standards
