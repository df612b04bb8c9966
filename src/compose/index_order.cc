// In: words. Out: their order in the index.
#include "compose/index_order.h"

#include "base/ascii.h"
#include "base/utf8.h"

namespace benchleaf::compose {

namespace {

// Bytes that sort after every letter: a private plane, so no word holds it.
constexpr std::string_view kBehindLetters = "\xF4\x80\x80\x80";
constexpr std::size_t kDigitRoom = 12;

bool is_letter(std::string_view piece) {
  if (piece.size() > 1) return piece >= "\xC3\x80" && piece < "\xE2\x80\x80";  // from À to the last letter before the signs
  return piece[0] >= 'a' && piece[0] <= 'z';
}

}  // namespace

std::string index_key(std::string_view word) {
  const std::string folded = base::fold(word);
  std::string key;
  for (std::size_t at = 0; at < folded.size();) {
    if (base::is_digit(folded[at])) {
      std::size_t end = at;
      while (end < folded.size() && base::is_digit(folded[end])) ++end;
      while (at + 1 < end && folded[at] == '0') ++at;
      if (end - at < kDigitRoom) key.append(kDigitRoom - (end - at), '0');
      key.append(folded, at, end - at);
      at = end;
      continue;
    }
    const base::Utf8Step step = base::next_code_point(folded, at);
    const std::string_view piece = std::string_view(folded).substr(at, step.length);
    at += step.length;
    if (piece == " " || piece == "-") {
      key += ' ';
    } else {
      if (!is_letter(piece)) key += kBehindLetters;
      key += piece;
    }
  }
  return key;
}

bool index_before(std::string_view one, std::string_view other) {
  const std::string one_key = index_key(one);
  const std::string other_key = index_key(other);
  return one_key == other_key ? one < other : one_key < other_key;
}

}  // namespace benchleaf::compose
