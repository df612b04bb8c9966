#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "page/text/paragraph.h"

namespace benchleaf::page {

/// Puts words, spaces and boxes one after the other on a line and stretches its spaces. One composer, one line.
class LineComposer {
 public:
  LineComposer(const std::vector<Piece>& pieces, Shaper& shaper, std::vector<MissingGlyph>& missing);

  /// A whole word.
  void add_word(int piece, const ShapedText& word) { append(piece, word, {}); }
  /// A part of a word; `hyphen`: with a hyphen put in behind it.
  void add_part(int piece, std::string_view part, bool hyphen);
  /// A space within the line: U+0020 or U+00A0.
  void add_space(int piece, std::string_view space);
  void add_box(int piece);

  /// Width without stretch.
  Length width() const { return pen_; }
  /// Spreads the slack over the spaces in proportion to their widths: more than nothing widens them, up to `kMostStretch`
  /// times their width, less narrows them.
  void stretch(Length slack);
  /// The space at which the line ends: a glyph outside the width, so that extracted text keeps its words apart.
  void add_space_at_end(int piece);

  /// The line with its pieces moved to `left`; top and baseline as those of a first line. `empty_piece` gives the
  /// height of a line that holds nothing.
  SetLine finish(Length left, int empty_piece);

  static constexpr Length kMostStretch = 5;

 private:
  struct Space {
    std::size_t part = 0;
    std::size_t glyph = 0;
    Length width = 0;
  };
  struct Extent {
    Length above = 0;  ///< from the top of the line to the baseline
    Length below = 0;
  };

  const Piece& piece(int index) const { return pieces_[static_cast<std::size_t>(index)]; }
  void append(int piece, const ShapedText& shaped, std::string_view last_text);
  TextItem& item_for(int piece, FontIndex font);
  PlacedPiece& place(int piece);
  void measure();
  Extent extent(int empty_piece) const;

  const std::vector<Piece>& pieces_;
  Shaper& shaper_;
  std::vector<MissingGlyph>& missing_;
  SetLine line_;
  std::vector<Space> spaces_;
  Length pen_ = 0;
};

}  // namespace benchleaf::page
