#pragma once

#include <vector>

#include "page/display.h"

namespace benchleaf::page {

/// Gives the room that is left to columns that want more, a millimetre at a time, each to the one that lowers the table most.
/// `wanted` is the natural width of each column, `naturals` that of each cell on one line, by row and column.
void widen_columns(std::vector<Length>& width, const std::vector<Length>& wanted,
                   const std::vector<std::vector<Length>>& naturals, Length spare);

}  // namespace benchleaf::page
