#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "model/tables.h"

namespace benchleaf::standards {

/// The rows of a published table; none where the table is missing, which the read stage has told.
const std::vector<model::PublishedTable::Row>& rows_of(const model::Tables& tables, std::string_view table);

/// The row with this key, or nullptr.
const model::PublishedTable::Row* row_of(const model::Tables& tables, std::string_view table, std::string_view key);

/// The words of a cell, or empty.
const std::string& cell_text(const model::PublishedTable::Row& row, std::string_view column);

/// The quantity of a cell; nothing where it states none.
std::optional<base::Quantity> cell_quantity(const model::PublishedTable::Row& row, std::string_view column);

/// The nominal of a cell in a unit, tidied; nothing where it states none.
std::optional<double> cell_value(const model::PublishedTable::Row& row, std::string_view column, base::Unit unit);

}  // namespace benchleaf::standards
