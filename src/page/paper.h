#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "page/display.h"

namespace benchleaf::page {

/// Which edge of the spread a page lies on; the outer margin holds the thumb tabs.
enum class Side { verso, recto };

/// The measures of one paper, all in page lengths. Margins are mirrored on verso pages.
struct Paper {
  std::string name;  ///< `a4`, `letter`
  Length width = 0;
  Length height = 0;
  Length inner = 0;  ///< spine to text block
  Length block_width = 0;
  Length block_top = 0;
  Length block_height = 0;
  Length head_rule = 0;  ///< running head rule, from the top
  Length folio = 0;      ///< baseline of the folio, from the foot

  Length block_left(Side side) const { return side == Side::recto ? inner : width - inner - block_width; }
  Length outer() const { return width - inner - block_width; }
};

/// The paper of that name, or nothing.
std::optional<Paper> paper_named(std::string_view name);

/// Grid of the text block: six columns with a gutter; gives the width of the first `columns` of them.
Length grid_width(const Paper& paper, int columns);
Length grid_left(const Paper& paper, int column);

}  // namespace benchleaf::page
