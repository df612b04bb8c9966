#pragma once

#include "composer.h"

namespace benchleaf::pdf {

/// A small invented book with everything that a display list can hold: two front pages and two of text, headings, a table
/// over two pages with a cell split between them, a figure, links, lists, a note, facts, ligatures, signs, thin spaces.
Composer make_trial(const page::FontSet& fonts);

}  // namespace benchleaf::pdf
