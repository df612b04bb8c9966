#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "page/text/hyphenator.h"

namespace benchleaf::page {

/// A place inside a word where a line may end.
struct BreakPoint {
  enum class Kind {
    soft,        ///< the writer's own U+00AD: a hyphen is put in
    dictionary,  ///< by the dictionary: a hyphen is put in
    compound,    ///< by the dictionary, in a word that has a hyphen already
    visible,     ///< behind a hyphen or a dash
    bare,        ///< behind a slash or at U+200B: nothing is put in
  };
  std::size_t at = 0;  ///< byte offset
  Kind kind = Kind::bare;
};

/// Whether a break of this kind puts a hyphen in.
bool puts_hyphen(BreakPoint::Kind kind);

/// Text without the characters that only say where it may and may not be broken, and what they said.
struct GuidedText {
  std::string text;
  std::vector<BreakPoint> breaks;  ///< U+00AD and U+200B
  std::vector<std::size_t> joins;  ///< U+2060 and U+FEFF: no break here
};

/// Appends a piece of text; ill-formed UTF-8 becomes U+FFFD.
void append_guided(GuidedText& guided, std::string_view piece);

/// Places, ascending, where a word (what stands between two breaking spaces) may be parted by itself: behind hyphens
/// and dashes between words of letters, behind slashes between long ones, inside addresses, and by the dictionary if
/// there is one. Words with a figure in them, joined to a figure by U+00A0 or U+2009, or in capitals stay whole.
std::vector<BreakPoint> word_breaks(std::string_view word, const Hyphenator* hyphenator);

}  // namespace benchleaf::page
