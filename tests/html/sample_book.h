#pragma once

#include "model/book.h"

namespace benchleaf::html_tests {

/// A book with every kind of block and sixty cells, for looking at the pages and for the tests. Its figures are made up
/// for the purpose and say nothing about real cells.
model::Book sample_book();

/// The parts it is made of.
model::Chapter cells_chapter();
model::Chapter methods_chapter();
model::Chapter tables_chapter();
model::Chapter terms_chapter();
model::Chapter index_chapter();

/// Plan above section of a flat round cell at true size, with its two measures.
model::Drawing cell_drawing(double diameter_mm, double height_mm, const std::string& record);
/// A bar from `low` to `high` on an axis of eight years.
model::Drawing interval_bar(double low, double high);

}  // namespace benchleaf::html_tests
