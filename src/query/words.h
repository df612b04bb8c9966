#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::query {

/// For look-up: small letters without their marks (`Öl` to `ol`), compatibility forms opened (`ﬁ`, full-width figures), micro as
/// the Greek letter. Latin and Greek letters only; everything else comes back as it was. The page's compiler has no library for
/// it.
std::string folded(std::string_view text);

/// One word of a query or of a name.
struct Word {
  enum class Sort { word, number, times, millimetre, inch };
  Sort sort = Sort::word;
  std::string text;  ///< folded; of a number without end zeros: `7.9`
  double value = 0;  ///< of a number; a fraction of an inch is one number
};

/// The words of a text: `won't` is `wont`; `7,9` is 7.9; `29/64` is one number, `395/399` are two; `7.9x5.4mm` is number, times,
/// number, millimetre; `SR626SW` and `p800` stay whole; `"` after a number is an inch.
std::vector<Word> words_of(std::string_view text);

/// The stem by which word forms are the same: `batteries` and `battery`, `closing` and `closed`, `polarizer` and `polariser`. A
/// word with figures in it, or of three letters and less, is its own stem.
std::string stem_of(std::string_view word);

/// Stems of all words, joined without a space: `O-rings`, `o ring` and `oring` are one.
std::string joined_key(const std::vector<Word>& words, std::size_t from, std::size_t to);
std::string joined_key(std::string_view name);

}  // namespace benchleaf::query
