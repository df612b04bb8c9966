#pragma once

#include <vector>

#include "page/text/paragraph_items.h"

namespace benchleaf::page {

/// What a setter keeps from paragraph to paragraph.
struct TextSetter::State {
  const FontSet& fonts;
  const Hyphenator* hyphenator;
  Shaper shaper;
  WordBreaks hyphenated;  ///< by the dictionary too
  WordBreaks whole;       ///< by signs alone

  bool can_hyphenate(bool wanted) const { return wanted && hyphenator != nullptr; }
  ParagraphText read(const std::vector<Piece>& pieces, bool hyphenate) {
    const bool with = can_hyphenate(hyphenate);
    return read_pieces(pieces, with ? hyphenator : nullptr, with ? hyphenated : whole);
  }
};

}  // namespace benchleaf::page
