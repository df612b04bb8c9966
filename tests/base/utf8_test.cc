// UTF-8: well-formedness by the Unicode Standard 15.0, table 3-7, with its examples of ill-formed text, and utf8proc as
// a second reader.
#include "base/utf8.h"

#include <string>
#include <vector>

#include <utf8proc.h>
#include "support/catch.h"

using namespace benchleaf::base;

namespace {

/// All code points, an ill-formed stretch as U+FFFD.
std::vector<unsigned> decoded(std::string_view text) {
  std::vector<unsigned> codes;
  for (char32_t code : code_points(text)) codes.push_back(code);
  return codes;
}

constexpr unsigned kBad = 0xFFFD;

/// Whether utf8proc reads exactly one code point over the whole text.
bool second_reader_accepts(const std::string& text) {
  utf8proc_int32_t code = -1;
  const auto* bytes = reinterpret_cast<const utf8proc_uint8_t*>(text.data());
  return utf8proc_iterate(bytes, static_cast<utf8proc_ssize_t>(text.size()), &code) == static_cast<utf8proc_ssize_t>(text.size());
}

bool accepts_whole(const std::string& text) {
  const Utf8Step step = next_code_point(text, 0);
  return step.valid && step.length == text.size();
}

}  // namespace

TEST_CASE("every Unicode scalar value survives encoding and decoding", "[utf8]") {
  for (char32_t code = 0; code <= 0x10FFFF; ++code) {
    if (code >= 0xD800 && code <= 0xDFFF) continue;
    const std::string text = to_utf8(code);
    const Utf8Step step = next_code_point(text, 0);
    if (!step.valid || step.code != code || step.length != text.size()) FAIL("U+" << std::hex << static_cast<unsigned>(code));
  }
  CHECK(to_utf8(char32_t{0xD800}) == "\xEF\xBF\xBD");
  CHECK(to_utf8(char32_t{0x110000}) == "\xEF\xBF\xBD");
}

TEST_CASE("two, three and four bytes are accepted where utf8proc accepts them", "[utf8]") {
  std::string text(2, '\0');
  for (unsigned lead = 0x80; lead <= 0xFF; ++lead) {
    for (unsigned next = 0; next <= 0xFF; ++next) {
      text = {static_cast<char>(lead), static_cast<char>(next)};
      if (accepts_whole(text) != second_reader_accepts(text)) FAIL("two bytes " << lead << " " << next);
      for (unsigned third : {0x00U, 0x41U, 0x7FU, 0x80U, 0x90U, 0xBFU, 0xC0U, 0xFFU}) {
        text = {static_cast<char>(lead), static_cast<char>(next), static_cast<char>(third)};
        if (accepts_whole(text) != second_reader_accepts(text)) FAIL("three bytes " << lead << " " << next << " " << third);
        text += '\x80';
        if (accepts_whole(text) != second_reader_accepts(text)) FAIL("four bytes " << lead << " " << next << " " << third);
      }
    }
  }
  SUCCEED("all lead and second bytes");
}

TEST_CASE("Unicode 15.0, table 3-8: non-shortest forms", "[utf8]") {
  CHECK(decoded("\xC0\xAF\xE0\x80\xBF\xF0\x81\x82\x41") ==
        std::vector<unsigned>{kBad, kBad, kBad, kBad, kBad, kBad, kBad, kBad, 0x41});
}

TEST_CASE("Unicode 15.0, table 3-9: surrogates", "[utf8]") {
  CHECK(decoded("\xED\xA0\x80\xED\xBF\xBF\xED\xAF\x41") ==
        std::vector<unsigned>{kBad, kBad, kBad, kBad, kBad, kBad, kBad, kBad, 0x41});
}

TEST_CASE("Unicode 15.0, table 3-10: other ill-formed sequences", "[utf8]") {
  CHECK(decoded("\xF4\x91\x92\x93\xFF\x41\x80\xBF\x42") ==
        std::vector<unsigned>{kBad, kBad, kBad, kBad, kBad, 0x41, kBad, kBad, 0x42});
}

TEST_CASE("Unicode 15.0, table 3-11: truncated sequences", "[utf8]") {
  CHECK(decoded("\xE1\x80\xE2\xF0\x91\x92\xF1\xBF\x41") == std::vector<unsigned>{kBad, kBad, kBad, kBad, 0x41});
}

TEST_CASE("the first ill-formed byte is found", "[utf8]") {
  CHECK(first_invalid_utf8("7.9\xC2\xA0mm") == std::nullopt);
  CHECK(first_invalid_utf8("") == std::nullopt);
  CHECK(first_invalid_utf8("ab\xFF"
                           "cd") == 2U);
  CHECK(first_invalid_utf8("ab\xE2\x80") == 2U);
  CHECK(first_invalid_utf8("\xF8\x88\x80\x80\x80") == 0U);  // a form of five bytes, of older definitions
}

TEST_CASE("columns count code points, not bytes", "[utf8]") {
  const std::string line = "µm Ω x";  // 2 + 1 + 1 + 2 + 1 + 1 bytes
  CHECK(count_code_points(line) == 6);
  CHECK(column_of(line, 0) == 1);
  CHECK(column_of(line, line.find('x')) == 6);
  CHECK(column_of(line, 1000) == 7);
  CHECK(column_of("", 0) == 1);
}

TEST_CASE("a terminal gives wide letters two columns and marks none", "[utf8]") {
  CHECK(display_width("SR754W") == 6);
  CHECK(display_width("\xE9\x9B\xBB\xE6\xB1\xA0") == 4);  // two ideographs
  CHECK(display_width("e\xCC\x81") == 1);                 // e and a combining acute
  CHECK(display_width("\x1b[") == 1);
}
