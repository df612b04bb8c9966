#pragma once

#include "model/book.h"
#include "page/display.h"
#include "page/paper.h"
#include "page/text/fonts.h"
#include "page/text/hyphenator.h"
#include "report/finding.h"

namespace benchleaf::page {

/// Sets a book on one paper: front matter in roman numerals, chapters, index; every page reference filled in, every
/// figure's box known. The fonts must be complete(). A word too wide for its place, a glyph no font has and a reference
/// to no place are findings.
Document set_book(const model::Book& book, const Paper& paper, const FontSet& fonts, const Hyphenator* hyphenator,
                  report::Findings& findings);

/// The printed page (`24`) on which an anchor stands, or an empty string.
std::string page_label(const Document& document, const std::string& anchor);

}  // namespace benchleaf::page
