#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "page/text/fonts.h"
#include "pdf/glyph_texts.h"
#include "pdf/haru_file.h"
#include "report/finding.h"

namespace benchleaf::pdf {

/// How the glyphs of one font are named in the file. Widths are in 1/1,000,000 of the type size, as the file states them.
struct FontCodes {
  std::vector<std::uint32_t> code;  ///< by glyph of the whole font
  std::vector<std::int64_t> width;  ///< by glyph of the whole font
  ObjectNumber object = 0;          ///< 0 for a font that is not used
};

/// Embeds a subset of every font in use as a Type 0 font with codes of two bytes. A font that cannot be embedded is a finding.
std::vector<FontCodes> embed_fonts(const page::FontSet& fonts, const std::vector<FontTexts>& texts, HaruFile& file,
                                   report::Findings& findings);

/// Name of a font in the resources of a page: `F3`.
std::string font_name(page::FontIndex font);

}  // namespace benchleaf::pdf
