#pragma once

#include "compose/desk.h"
#include "model/book.h"

namespace benchleaf::compose {

/// What paper says in one table where the screen has an entry for each record. Rows are the places that links lead to.

/// A block for each size: the cell at true size, a row for each cell of it, other systems set apart.
model::Blocks cells_by_size(const Desk& desk);
/// Every trade number, consumer number and designation with its size and page.
model::Block cells_by_number(const Desk& desk);
/// Every liquid on every material in one matrix, with the page of the liquid.
model::Blocks liquids_on_materials(const Desk& desk);
/// Whether a job uses the liquid: the others stand in part B.
bool is_of_the_bench(const Desk& desk, const model::Chemistry& liquid);
/// Each substance in a row: formula, boiling point, flash point, its classes.
model::Blocks substance_table(const Desk& desk);
/// What abrasives do to materials, in one table for all that agree.
model::Blocks abrasives_on_materials(const Desk& desk);
/// Where sources disagree, record by record, and why the book took the value it has.
model::Blocks conflict_list(const Desk& desk);

}  // namespace benchleaf::compose
