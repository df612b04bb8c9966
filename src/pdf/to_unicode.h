#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "pdf/glyph_texts.h"

namespace benchleaf::pdf {

/// The character map of a font: for each code, which is the place of its glyph in `old_glyphs`, the text it stands for.
std::string to_unicode(const FontTexts& texts, const std::vector<std::uint32_t>& old_glyphs);

}  // namespace benchleaf::pdf
