#pragma once

#include <string>
#include <vector>

#include "page/display.h"
#include "page/paper.h"
#include "page/text/fonts.h"

namespace benchleaf::test {

/// What is wrong with the places of the words of a handbook, read from its display list: words that overlap, and words that
/// stand in none of the areas of their page (block, notes, running head, line of the folio, thumb tab). The cover, which has
/// areas of its own, is looked at for overlaps alone.
std::vector<std::string> box_faults(const page::Document& document, const page::FontSet& fonts, const page::Paper& paper);

}  // namespace benchleaf::test
