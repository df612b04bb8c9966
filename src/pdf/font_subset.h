#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf::pdf {

/// A font program with only some glyphs, numbered anew from 0 without gaps; glyph 0 stays the one for missing characters.
struct FontSubset {
  std::string bytes;                      ///< empty if the font could not be reduced
  std::vector<std::uint32_t> old_glyphs;  ///< by new number: the number in the whole font
};

/// Takes the glyphs, and those that they are made of, out of a TrueType font; all tables but those that PDF asks for go.
FontSubset subset_font(const std::string& font, const std::vector<std::uint32_t>& glyphs);

}  // namespace benchleaf::pdf
