#pragma once

#include <functional>
#include <vector>

#include "compose/desk.h"
#include "compose/line.h"
#include "model/book.h"

namespace benchleaf::compose {

/// What a line says of the cells of one size; it may say nothing.
using SaySize = std::function<void(const Desk&, Line&, const derive::SizeFamily&)>;

/// Rows of two cells: a row for each diameter, printed in `style`, with the outline to lay the cell on; beside it a line for
/// each height of which `say` says something. A size whose diameter is not on file is left out.
std::vector<model::TableRow> size_rows(const Desk& desk, model::Style style, const SaySize& say);

}  // namespace benchleaf::compose
