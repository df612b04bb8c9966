#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "page/display.h"

namespace benchleaf::pdf {

/// Glyphs [first, last) of a text item that stand for `text` together: one glyph for a letter or a ligature, several for a
/// letter that the font puts together from parts.
struct Cluster {
  std::size_t first = 0;
  std::size_t last = 0;
  std::string_view text;
};

/// The cluster that begins at a glyph of the item.
Cluster cluster_at(const page::TextItem& item, std::size_t first);

/// What the glyphs of one font stand for in a document.
class FontTexts {
 public:
  /// Notes a glyph; only texts of glyphs that stand alone for it are counted.
  void note(std::uint32_t glyph, std::string_view text, bool counts);
  /// The text the glyph stands for most often, by ties the one that comes first in order of bytes. Empty where no text is known.
  const std::string& text_of(std::uint32_t glyph) const;
  /// All glyphs that were noted, in rising order.
  std::vector<std::uint32_t> used() const;

 private:
  struct Reading {
    std::string text;
    std::int64_t count = 0;
  };
  std::vector<std::vector<Reading>> glyphs_;  ///< by glyph; the most frequent reading first
};

/// What the pages of a document show.
struct Shown {
  std::vector<FontTexts> texts;       ///< of every glyph, by font
  std::vector<page::SignItem> signs;  ///< one of each sort
};
Shown gather_shown(const page::Document& document, int fonts);

}  // namespace benchleaf::pdf
