#pragma once

#include <vector>

#include "page/strip.h"

namespace benchleaf::page {

/// Where a strip comes to stand in a set of columns, from their top left corner.
struct ColumnPlace {
  std::size_t strip = 0;
  int column = 0;
  Length y = 0;
  int head = -1;  ///< the table head that is said again above it, at head_y; or none
  Length head_y = 0;
};

struct ColumnBreaks {
  std::vector<ColumnPlace> places;
  std::size_t end = 0;  ///< behind the last strip that went in
  Length height = 0;
};

/// Fills as many columns as the strips from `first` ask for with what goes in before `end`, no higher than `room`. If all
/// goes in, the columns are as even as keeps allow.
ColumnBreaks column_breaks(const Galley& galley, std::size_t first, std::size_t end, Length room);

/// How high the first strips are that stay together, at the head of a column.
Length first_chain_height(const Galley& galley, std::size_t first, std::size_t end);

/// Strips of columns made one strip of the whole width, even and unbreakable. They must fit `room`.
Strip in_columns(const Galley& galley, std::size_t first, std::size_t end, Length block_width, Length room);

}  // namespace benchleaf::page
