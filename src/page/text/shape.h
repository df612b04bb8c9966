#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "base/span.h"
#include "page/text/style.h"
#include "report/finding.h"

namespace benchleaf::page {

/// Glyphs of one font that stand side by side. Clusters are byte offsets into the text of the ShapedText.
struct ShapedRun {
  FontIndex font = 0;
  std::size_t begin = 0;      ///< first byte of the text
  std::size_t end = 0;        ///< behind the last byte
  std::int64_t advance = 0;   ///< of all glyphs, font units
  std::vector<Glyph> glyphs;  ///< `extra` is 0
};

/// A text in glyphs, without a size. Left to right, whatever the script.
struct ShapedText {
  std::string text;  ///< as given, less what only tells where to break (U+00AD, U+200B, U+2060, U+FEFF)
  std::vector<ShapedRun> runs;
  std::vector<char32_t> missing;  ///< code points that no font has, in reading order; they are set as the empty box
};

/// A code point that neither the face nor the symbol faces have.
struct MissingGlyph {
  int piece = 0;  ///< index of the piece that holds it
  char32_t code = 0;
  std::string text;  ///< the word it stands in
};

/// Adds one `font.missing-glyph` for each.
void report_missing(const std::vector<MissingGlyph>& missing, base::Span where, report::Findings& findings);

/// Turns text into glyphs: kerning and ligatures on, tabular or proportional digits, and for each code point that the
/// face lacks the symbol face (the bold one beside bold faces). Every text is shaped once and kept; not for use by two
/// threads at a time.
class Shaper {
 public:
  explicit Shaper(const FontSet& fonts);
  ~Shaper();
  Shaper(const Shaper&) = delete;
  Shaper& operator=(const Shaper&) = delete;

  /// Ill-formed UTF-8 is set as U+FFFD. The result stays valid until forget().
  const ShapedText& shape(std::string_view text, Face face, bool tabular = true);
  /// Width at the size and tracking of the style, 1/1000 pt.
  Length width(const ShapedText& shaped, const TextStyle& style) const;
  /// Width of the glyphs that stand for the first `bytes` bytes of the text.
  Length width_before(const ShapedText& shaped, std::size_t bytes, const TextStyle& style) const;
  Length width(std::string_view text, const TextStyle& style);

  /// How many texts are kept; all are let go, and the results with them.
  std::size_t kept() const;
  void forget();

  const FontSet& fonts() const { return fonts_; }

 private:
  struct Cache;
  const FontSet& fonts_;
  std::unique_ptr<Cache> cache_;
};

}  // namespace benchleaf::page
