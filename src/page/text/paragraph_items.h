#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "page/text/break_points.h"
#include "page/text/line_breaker.h"
#include "page/text/paragraph.h"
#include "page/text/text_hash.h"

namespace benchleaf::page {

/// What stands in a row in a paragraph: a word or the part of it that one piece holds, a space, a box, a line end.
struct Atom {
  enum class Kind { word, space, box, line_end };
  Kind kind = Kind::word;
  int piece = 0;
  std::size_t begin = 0;  ///< bytes of ParagraphText::text
  std::size_t end = 0;
  bool breakable = true;           ///< of a space
  std::vector<BreakPoint> breaks;  ///< of a word: behind `begin`, at most at `end`; offsets into the text
};

struct ParagraphText {
  std::string text;         ///< all pieces, boxes as U+FFFC
  std::vector<Atom> atoms;  ///< spaces never first, last or two in a row in a line; empty without anything to set
};

/// Word to its own breaks; kept because words come again.
using WordBreaks = ByText<std::vector<BreakPoint>>;

/// Parts the pieces into atoms. `hyphenator` may be null.
ParagraphText read_pieces(const std::vector<Piece>& pieces, const Hyphenator* hyphenator, WordBreaks& known);

/// What an item of the line breaker stands for.
struct ItemSource {
  std::size_t atom = 0;
  std::size_t at = 0;   ///< of a break inside a word: its offset in the text, else 0
  bool hyphen = false;  ///< whether a break here puts a hyphen in
};

struct ItemOptions {
  bool justify = false;
  int hyphen_penalty = 50;
};

struct ParagraphItems {
  std::vector<BreakItem> items;
  std::vector<ItemSource> sources;        ///< one for each item
  std::vector<const ShapedText*> shapes;  ///< one for each atom: a word in glyphs, else null
};

/// The atoms as boxes, glue and penalties; ends with a forced break.
ParagraphItems make_items(const ParagraphText& paragraph, const std::vector<Piece>& pieces, Shaper& shaper,
                          const ItemOptions& options);

}  // namespace benchleaf::page
