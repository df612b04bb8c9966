// In: the published tables. Out: a fact for every cell of every row. A bare number in a column of words is a name: the size
// 44, the year 2016.

#include <string>
#include <utility>

#include "base/number.h"
#include "derive/makers.h"

namespace benchleaf::derive {

void make_table_facts(Making& making) {
  for (const auto& table : making.tables.published) {
    const std::string where = table.edition.empty() ? table.publication : table.publication + ", " + table.edition;
    for (const auto& row : table.rows) {
      for (const auto& column : table.columns) {
        const auto cell = row.cells.find(column.name);
        if (cell == row.cells.end()) continue;
        model::Fact fact;
        fact.id = "table/" + table.name + "#" + row.key + "." + column.name;
        const bool bare = column.quantity.empty() && base::parse_decimal(cell->second).has_value();
        if (bare || !fill_quantity(fact, cell->second)) fact.printed = cell->second;
        fact.trust = row.trust;
        fact.source = source_text(row.source, where);
        making.facts.add(std::move(fact));
      }
    }
  }
}

}  // namespace benchleaf::derive
