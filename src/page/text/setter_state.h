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

  static constexpr std::size_t kMostWords = 20'000;  ///< kept of each sort: twice what the handbook has

  bool can_hyphenate(bool wanted) const { return wanted && hyphenator != nullptr; }
  ParagraphText read(const std::vector<Piece>& pieces, bool hyphenate) {
    // Between paragraphs nobody holds a shape or a break.
    if (shaper.kept() > kMostWords) shaper.forget();
    if (hyphenated.size() > kMostWords) hyphenated.clear();
    if (whole.size() > kMostWords) whole.clear();
    const bool with = can_hyphenate(hyphenate);
    return read_pieces(pieces, with ? hyphenator : nullptr, with ? hyphenated : whole);
  }
};

}  // namespace benchleaf::page
