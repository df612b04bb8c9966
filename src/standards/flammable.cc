// In: flash and boiling point of a liquid, the table of flammable categories. Out: its category.
#include "standards/flammable.h"

#include "base/unit.h"
#include "standards/table_view.h"

namespace benchleaf::standards {
namespace {

using base::Unit;

bool holds_boiling(const model::PublishedTable::Row& row, std::optional<double> boiling) {
  const auto limit = cell_value(row, "boiling-limit", Unit::degree_celsius);
  const bool low = boiling && limit && *boiling <= *limit;
  return !depends_on_boiling(row) || low == (cell_text(row, "boiling") == "up to");
}

}  // namespace

bool depends_on_boiling(const model::PublishedTable::Row& category) { return cell_text(category, "boiling") != "any"; }

const model::PublishedTable::Row* flammable_category(const model::Tables& tables, double flash, std::optional<double> boiling) {
  for (const auto& row : rows_of(tables, "flammable-categories")) {
    const auto from = cell_value(row, "flash-from", Unit::degree_celsius);
    const auto below = cell_value(row, "flash-below", Unit::degree_celsius);
    const bool last = !depends_on_boiling(row);
    const bool within = from && below && flash >= *from && (flash < *below || (last && flash == *below));
    if (within && holds_boiling(row, boiling)) return &row;
  }
  return nullptr;
}

}  // namespace benchleaf::standards
