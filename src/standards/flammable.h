#pragma once

#include <optional>

#include "model/tables.h"

namespace benchleaf::standards {

/// The row of the table of flammable categories that a liquid falls into, by its flash point and where it begins to boil, both
/// in °C; nullptr above the last category. Without a boiling point it is taken to boil above the limit of the row. The last
/// category holds its own upper end (annex I, table 2.6.1).
const model::PublishedTable::Row* flammable_category(const model::Tables& tables, double flash, std::optional<double> boiling);

/// Whether the boiling point has a say in the category, so that it matters where none is known.
bool depends_on_boiling(const model::PublishedTable::Row& category);

}  // namespace benchleaf::standards
