#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "pdf/glyph_texts.h"

namespace benchleaf::pdf {

/// The text that each code of a font stands for.
using CodeTexts = std::map<std::uint32_t, std::string>;

/// The texts of a subset, whose codes are the places of its glyphs in `old_glyphs`.
CodeTexts texts_by_code(const FontTexts& texts, const std::vector<std::uint32_t>& old_glyphs);

/// The character map of a font with codes of one or two bytes.
std::string to_unicode(const CodeTexts& texts, int code_bytes);

}  // namespace benchleaf::pdf
