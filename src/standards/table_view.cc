// In: published tables in their general form. Out: rows by key, cells as words or values.

#include "standards/table_view.h"

#include <variant>

#include "base/number.h"

namespace benchleaf::standards {

using model::PublishedTable;

const std::vector<PublishedTable::Row>& rows_of(const model::Tables& tables, std::string_view table) {
  static const std::vector<PublishedTable::Row> kNone;
  const PublishedTable* found = tables.find(table);
  return found == nullptr ? kNone : found->rows;
}

const PublishedTable::Row* row_of(const model::Tables& tables, std::string_view table, std::string_view key) {
  for (const auto& row : rows_of(tables, table)) {
    if (row.key == key) return &row;
  }
  return nullptr;
}

const std::string& cell_text(const PublishedTable::Row& row, std::string_view column) {
  static const std::string kEmpty;
  const auto found = row.cells.find(column);
  return found == row.cells.end() ? kEmpty : found->second;
}

std::optional<base::Quantity> cell_quantity(const PublishedTable::Row& row, std::string_view column) {
  auto parsed = base::parse_quantity(cell_text(row, column));
  const auto* quantity = std::get_if<base::Quantity>(&parsed);
  if (quantity == nullptr || !quantity->has_value()) return std::nullopt;
  return *quantity;
}

std::optional<double> cell_value(const PublishedTable::Row& row, std::string_view column, base::Unit unit) {
  const auto quantity = cell_quantity(row, column);
  const auto value = quantity ? quantity->value_in(unit) : std::nullopt;
  if (!value) return std::nullopt;
  return base::tidy(*value);
}

}  // namespace benchleaf::standards
