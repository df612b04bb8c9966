#pragma once

#include <string>
#include <vector>

#include "page/text/fonts.h"
#include "page/text/hyphenator.h"
#include "page/text/paragraph.h"

namespace benchleaf::test {

/// Bytes of a file, or an empty text.
std::string file_bytes(const std::string& path);
/// The font files that schema/fonts.yaml names; tests run in the project's root.
std::vector<page::FontFile> font_files();

/// The book's fonts and dictionary, opened once.
const page::FontSet& book_fonts();
const page::Hyphenator& book_hyphenator();

/// One piece of body text.
std::vector<page::Piece> body(const std::string& text, page::Face face = page::Face::text);
/// All text of a line, in reading order, boxes left out.
std::string line_text(const page::SetLine& line);
/// Where the ink of a line ends, worked out anew from glyph advances in floating point, without spaces at the end.
double ink_end(const page::SetLine& line);

}  // namespace benchleaf::test
