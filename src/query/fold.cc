// In: text. Out: the text as it is compared. Letters with marks stand in the order of Unicode, each with the letter that is left.
#include <array>

#include "base/utf8.h"
#include "query/words.h"

namespace benchleaf::query {

namespace {

// U+00C0 to U+017F; a space: no letter of the list, kept as it is. The Unicode Character Database, decomposition mappings.
constexpr std::string_view kLatin1 = "aaaaaa ceeeeiiii nooooo  uuuuy  aaaaaa ceeeeiiii nooooo  uuuuy y";
constexpr std::string_view kExtended =
    "aaaaaaccccccccdd  eeeeeeeeeegggggggghh  iiiiiiiii   jjkk llllll    nnnnnn   oooooo  rrrrrrssssssssttt   "
    "uuuuuuuuuuuuwwyyyzzzzzz ";

struct Opened {
  char32_t code;
  std::string_view text;
};
constexpr std::array kOpened = {Opened{U'\u00DF', "ss"},   Opened{U'\u00B5', "\xCE\xBC"}, Opened{U'\uFB01', "fi"},
                                Opened{U'\uFB02', "fl"},   Opened{U'\uFB00', "ff"},       Opened{U'\u00B2', "2"},
                                Opened{U'\u00B3', "3"},    Opened{U'\u00B9', "1"},        Opened{U'\u00BD', " 1/2"},
                                Opened{U'\u00BC', " 1/4"}, Opened{U'\u00BE', " 3/4"}};

std::string_view letter_of(char32_t code) {
  if (code >= 0xC0 && code < 0x100) return kLatin1.substr(code - 0xC0, 1);
  if (code >= 0x100 && code < 0x180) return kExtended.substr(code - 0x100, 1);
  return {};
}

std::string folded_code(char32_t code, std::string_view as_written) {
  if (code < 0x80) {
    const char c = static_cast<char>(code);
    return std::string(1, c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c);
  }
  for (const Opened& one : kOpened) {
    if (one.code == code) return std::string(one.text);
  }
  const std::string_view letter = letter_of(code);
  if (!letter.empty() && letter != " ") return std::string(letter);
  if (code >= 0xFF01 && code <= 0xFF5E) return folded_code(code - 0xFEE0, as_written);  // full width
  if (code >= 0x300 && code < 0x370) return {};                                         // a mark by itself
  if (code >= 0x391 && code <= 0x3A9) return base::to_utf8(code + 0x20);                // Greek capitals
  return std::string(as_written);
}

}  // namespace

std::string folded(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const base::Utf8Step step = base::next_code_point(text, at);
    const std::string_view piece = text.substr(at, step.length);
    out += step.valid ? folded_code(step.code, piece) : std::string(piece);
    at += step.length;
  }
  return out;
}

}  // namespace benchleaf::query
