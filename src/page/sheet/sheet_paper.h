#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "page/display.h"
#include "page/look.h"

namespace benchleaf::page {

/// The measures of a sheet, as it lies.
struct SheetPaper {
  std::string name;  ///< `a3 landscape`
  Length width = 0;
  Length height = 0;
  Length edge = 0;             ///< clear of everything, for the laminator
  Length title_band = 0;       ///< from the edge to the rule under the title
  Length foot_band = 0;        ///< from the rule above the check bar to the edge
  Length gap = 0;              ///< between columns
  double floor_pt = kFloorPt;  ///< no words are smaller

  Length live_width() const { return width - 2 * edge; }
  Length live_top() const { return edge + title_band; }
  Length live_height() const { return height - 2 * edge - title_band - foot_band; }
};

/// One of model::kPaperSizes, upright or lying; nothing for another name.
std::optional<SheetPaper> sheet_paper(std::string_view name, bool landscape);
/// A5 upright, for a card that is held in the hand and cut from a larger paper.
SheetPaper card_paper();

}  // namespace benchleaf::page
