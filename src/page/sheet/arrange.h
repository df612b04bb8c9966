#pragma once

#include <cstddef>
#include <vector>

#include "page/display.h"

namespace benchleaf::page {

/// The height of a panel, and whether it spans all columns.
struct PanelSize {
  Length height = 0;
  bool wide = false;
};

struct PanelPlace {
  int column = 0;
  Length top = 0;  ///< from the top of the live area
};

/// Panels in their reading order: down one column, then down the next; a wide one parts what is above from what is below.
struct Arrangement {
  std::vector<PanelPlace> places;    ///< one for each panel
  Length height = 0;                 ///< of the fullest columns
  std::vector<std::size_t> fullest;  ///< panels that make it so high: the wide ones and the highest column of each part
};

/// Places panels so that the sheet is as low as the order allows, `gap` between them.
Arrangement arrange(const std::vector<PanelSize>& panels, int columns, Length gap);

/// Spreads the panels of each column down to `height`, so that columns end together; gaps grow by `most` at the most.
void spread(Arrangement& arrangement, const std::vector<PanelSize>& panels, Length height, Length most);

}  // namespace benchleaf::page
