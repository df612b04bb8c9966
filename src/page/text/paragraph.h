#pragma once

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "page/text/hyphenator.h"
#include "page/text/shape.h"

namespace benchleaf::page {

/// Something drawn that stands in a line like a letter: a sign, a mark, a blank to write on.
struct InlineBox {
  Length width = 0;
  Length height = 0;  ///< above the baseline
  Length depth = 0;   ///< below it
  int index = 0;      ///< the caller's own number
};

/// A stretch of one style, or a box (then `text` is not read). U+0020 parts words; U+00A0 and U+2009 join them; `\n`
/// ends a line; U+00AD and U+200B allow a break, with and without a hyphen.
struct Piece {
  std::string text;
  TextStyle style;
  TagId tag = kLayoutArtifact;
  std::string link;    ///< the caller's own; carried through
  std::string anchor;  ///< the caller's own; carried through to where the piece begins
  std::optional<InlineBox> box;
};

enum class Align { left, right, centre, justify };

/// A line of its own width, `left` from the left edge of the paragraph.
struct LineSlot {
  Length width = 0;
  Length left = 0;
};

struct ParagraphOptions {
  Length width = 0;
  std::vector<LineSlot> first_lines = {};  ///< for the first lines, before `width` from the left edge
  Align align = Align::left;
  bool hyphenate = true;   ///< with the setter's hyphenator
  double tolerance = 1.5;  ///< greatest stretch of a space in a justified line, in units of its stretch
};

/// A piece, or the part of it that one line and one font hold. A text's `at` is its x in the paragraph and -rise.
struct PlacedPiece {
  Length x = 0;      ///< from the left edge of the paragraph
  Length width = 0;  ///< without the space at a line end
  int piece = 0;     ///< index of the piece
  TagId tag = kLayoutArtifact;
  std::string link;
  std::string anchor;  ///< only on the first part of its piece
  std::variant<TextItem, InlineBox> what;
};

struct SetLine {
  Length top = 0;       ///< from the top of the paragraph
  Length baseline = 0;  ///< from the top of the paragraph
  Length height = 0;    ///< top to top of the next line
  Length left = 0;      ///< where the ink begins, from the left edge
  Length width = 0;     ///< of the ink, stretched spaces included
  Length too_wide = 0;  ///< by how much it overruns, as nothing in it can be parted; else 0
  std::vector<PlacedPiece> pieces;
};

struct SetParagraph {
  std::vector<SetLine> lines;
  Length height = 0;
  Length width = 0;  ///< right end of the widest line
  std::vector<MissingGlyph> missing;
  bool too_wide() const;  ///< whether any line overruns
};

/// Sets paragraphs and single lines. Keeps what it has shaped; one setter per thread, for a whole book.
class TextSetter {
 public:
  /// `hyphenator` may be null; both must live as long as the setter.
  TextSetter(const FontSet& fonts, const Hyphenator* hyphenator);
  ~TextSetter();
  TextSetter(const TextSetter&) = delete;
  TextSetter& operator=(const TextSetter&) = delete;

  /// Total-fit line breaking. No line overruns unless a part of it that cannot be broken is wider than the line.
  SetParagraph set(const std::vector<Piece>& pieces, const ParagraphOptions& options);
  /// One line, nothing broken, `\n` read as a space: for table cells. Missing glyphs are added to `missing`.
  SetLine set_line(const std::vector<Piece>& pieces, std::vector<MissingGlyph>& missing);

  /// Width of the longest line if nothing but `\n` breaks.
  Length natural_width(const std::vector<Piece>& pieces);
  /// Width of the widest part that cannot be broken.
  Length minimum_width(const std::vector<Piece>& pieces, bool hyphenate = true);
  Length height(const std::vector<Piece>& pieces, const ParagraphOptions& options) { return set(pieces, options).height; }

  Shaper& shaper();
  const FontSet& fonts() const;

  struct State;

 private:
  std::unique_ptr<State> state_;
};

/// x of the decimal point (or of the end of the whole number) of every number in a line, in reading order: for columns
/// that align on it. Digits inside codes such as `SR626SW` are no numbers.
std::vector<Length> decimal_points(const FontSet& fonts, const SetLine& line);

}  // namespace benchleaf::page
