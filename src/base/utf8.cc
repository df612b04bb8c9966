// In: bytes that ought to be UTF-8. Out: code points, counts, columns. Well-formedness is that of the Unicode Standard,
// version 15.0, table 3-7; ill-formed stretches are cut as its section 3.9 advises (maximal subparts).
#include "base/utf8.h"

#include <algorithm>
#include <array>

namespace benchleaf::base {

namespace {

/// One row of table 3-7: lead bytes, how many bytes follow, and what the first of them may be; the others are 80..BF.
struct LeadRange {
  unsigned first;
  unsigned last;
  std::size_t following;
  unsigned second_low;
  unsigned second_high;
};

constexpr std::array<LeadRange, 8> kLeads = {{{0xC2, 0xDF, 1, 0x80, 0xBF},
                                              {0xE0, 0xE0, 2, 0xA0, 0xBF},
                                              {0xE1, 0xEC, 2, 0x80, 0xBF},
                                              {0xED, 0xED, 2, 0x80, 0x9F},
                                              {0xEE, 0xEF, 2, 0x80, 0xBF},
                                              {0xF0, 0xF0, 3, 0x90, 0xBF},
                                              {0xF1, 0xF3, 3, 0x80, 0xBF},
                                              {0xF4, 0xF4, 3, 0x80, 0x8F}}};

const LeadRange* lead_range(unsigned byte) {
  const auto found = std::find_if(kLeads.begin(), kLeads.end(),
                                  [byte](const LeadRange& lead) { return byte >= lead.first && byte <= lead.last; });
  return found == kLeads.end() ? nullptr : &*found;
}

struct CodeRange {
  char32_t first;
  char32_t last;
};

template <std::size_t N>
bool lies_in(const std::array<CodeRange, N>& ranges, char32_t code) {
  return std::any_of(ranges.begin(), ranges.end(),
                     [code](const CodeRange& range) { return code >= range.first && code <= range.last; });
}

// Coarse blocks, enough to keep a caret under its character: marks that sit on the letter before, and East Asian blocks.
constexpr std::array<CodeRange, 10> kNoWidth = {{{0x0000, 0x001F},
                                                 {0x007F, 0x009F},
                                                 {0x0300, 0x036F},
                                                 {0x1AB0, 0x1AFF},
                                                 {0x1DC0, 0x1DFF},
                                                 {0x200B, 0x200F},
                                                 {0x202A, 0x202E},
                                                 {0x2060, 0x2064},
                                                 {0x20D0, 0x20FF},
                                                 {0xFE20, 0xFE2F}}};
constexpr std::array<CodeRange, 10> kWide = {{{0x1100, 0x115F},
                                              {0x2E80, 0x303E},
                                              {0x3041, 0x4DBF},
                                              {0x4E00, 0xA4CF},
                                              {0xAC00, 0xD7A3},
                                              {0xF900, 0xFAFF},
                                              {0xFF01, 0xFF60},
                                              {0xFFE0, 0xFFE6},
                                              {0x1F300, 0x1F64F},
                                              {0x20000, 0x3FFFD}}};

}  // namespace

Utf8Step next_code_point(std::string_view text, std::size_t at) {
  const auto byte = [text](std::size_t place) { return static_cast<unsigned>(static_cast<unsigned char>(text.at(place))); };
  const unsigned first = byte(at);
  if (first < 0x80) return {static_cast<char32_t>(first), 1, true};
  const LeadRange* lead = lead_range(first);
  if (lead == nullptr) return {};
  char32_t code = first & (0x3FU >> lead->following);
  for (std::size_t i = 1; i <= lead->following; ++i) {
    if (at + i >= text.size()) return {U'\uFFFD', i, false};
    const unsigned next = byte(at + i);
    const unsigned low = i == 1 ? lead->second_low : 0x80;
    const unsigned high = i == 1 ? lead->second_high : 0xBF;
    if (next < low || next > high) return {U'\uFFFD', i, false};
    code = (code << 6) | (next & 0x3F);
  }
  return {code, lead->following + 1, true};
}

std::optional<std::size_t> first_invalid_utf8(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const Utf8Step step = next_code_point(text, at);
    if (!step.valid) return at;
    at += step.length;
  }
  return std::nullopt;
}

std::u32string code_points(std::string_view text) {
  std::u32string codes;
  codes.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const Utf8Step step = next_code_point(text, at);
    codes += step.code;
    at += step.length;
  }
  return codes;
}

std::string to_utf8(char32_t code) {
  const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
  if (surrogate || code > 0x10FFFF) code = U'\uFFFD';
  const auto tail = [code](unsigned shift) { return static_cast<char>(0x80U | ((code >> shift) & 0x3FU)); };
  if (code < 0x80) return {static_cast<char>(code)};
  if (code < 0x800) return {static_cast<char>(0xC0U | (code >> 6)), tail(0)};
  if (code < 0x10000) return {static_cast<char>(0xE0U | (code >> 12)), tail(6), tail(0)};
  return {static_cast<char>(0xF0U | (code >> 18)), tail(12), tail(6), tail(0)};
}

std::string to_utf8(std::u32string_view codes) {
  std::string text;
  for (char32_t code : codes) text += to_utf8(code);
  return text;
}

std::size_t count_code_points(std::string_view text) {
  std::size_t count = 0;
  for (std::size_t at = 0; at < text.size(); ++count) at += next_code_point(text, at).length;
  return count;
}

int column_of(std::string_view line, std::size_t offset) {
  return static_cast<int>(count_code_points(line.substr(0, std::min(offset, line.size())))) + 1;
}

int display_width(std::string_view text) {
  int width = 0;
  for (char32_t code : code_points(text)) {
    if (lies_in(kNoWidth, code)) continue;
    width += lies_in(kWide, code) ? 2 : 1;
  }
  return width;
}

}  // namespace benchleaf::base
