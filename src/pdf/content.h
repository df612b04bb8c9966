#pragma once

#include <optional>
#include <string>
#include <vector>

#include "page/display.h"
#include "page/text/fonts.h"
#include "pdf/fonts.h"
#include "pdf/glyph_texts.h"

namespace benchleaf::pdf {

/// A stretch of content of one page that belongs to one structure element.
struct Piece {
  page::TagId tag = 0;
  int page = 0;
  int id = 0;  ///< marked-content identifier within the page, from 0
};

/// Everything that content streams need to know of the fonts.
struct FontBook {
  const page::FontSet& fonts;
  std::vector<FontTexts> texts;  ///< by font
  std::vector<FontCodes> codes;  ///< by font
};

/// Whether an item leaves no mark on the page.
bool is_blank(const page::Item& item);

/// The content stream of a page, with its artifacts and structure content marked. Adds the pieces in the order in which
/// they are placed.
std::string write_content(const page::Document& document, int page, const FontBook& book, std::vector<Piece>& pieces);

}  // namespace benchleaf::pdf
