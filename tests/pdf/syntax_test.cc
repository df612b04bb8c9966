// Expected: PDF Reference, third edition (PDF 1.4), 3.2.2 numbers, 3.2.3 strings, 3.2.4 names, 3.8.1 text strings; UTF-16 by
// the Unicode Standard, section 3.9 (U+10302 is D800 DF02 in its table 3-4).
#include "pdf/syntax.h"

#include <cstdint>
#include <limits>
#include <string>

#include "support/catch.h"

using namespace std::string_literals;

namespace benchleaf::pdf {

namespace {

std::string thousandths(std::int64_t value) {
  std::string out;
  append_thousandths(out, value);
  return out;
}

std::string text(std::string_view utf8) {
  std::string out;
  append_text(out, utf8);
  return out;
}

std::string bytes(std::string_view raw) {
  std::string out;
  append_bytes(out, raw);
  return out;
}

std::string name(std::string_view raw) {
  std::string out;
  append_name(out, raw);
  return out;
}

}  // namespace

TEST_CASE("thousandths are written without zeros at the end", "[pdf]") {
  CHECK(thousandths(0) == "0");
  CHECK(thousandths(1) == "0.001");
  CHECK(thousandths(-1) == "-0.001");
  CHECK(thousandths(10) == "0.01");
  CHECK(thousandths(-1250) == "-1.25");
  CHECK(thousandths(595'276) == "595.276");
  CHECK(thousandths(842'000) == "842");
  CHECK(thousandths(std::numeric_limits<std::int64_t>::min()) == "-9223372036854775.808");
}

TEST_CASE("lengths are rounded, halves away from zero", "[pdf]") {
  const auto rounded = [](void (*append)(std::string&, std::int64_t), std::int64_t value) {
    std::string out;
    append(out, value);
    return out;
  };
  CHECK(rounded(append_hundredths, 595'276) == "595.28");
  CHECK(rounded(append_hundredths, 4) == "0");
  CHECK(rounded(append_hundredths, -1'005) == "-1.01");
  CHECK(rounded(append_tenths, 841'890) == "841.9");
  CHECK(rounded(append_tenths, -49) == "0");
}

TEST_CASE("texts are PDFDocEncoding or UTF-16", "[pdf]") {
  CHECK(text("Cells") == "(Cells)");
  CHECK(text("a (b) \\ c") == "(a \\(b\\) \\\\ c)");
  CHECK(text("") == "()");
  // Appendix D.1: micro 265, en dash 205, ellipsis 203, quote right 220, in octal; Euro and the soft hyphen go as UTF-16.
  CHECK(text("µ – … ’") == "(\265 \205 \203 \220)");
  CHECK(text("a\u00ADb") == "(\xFE\xFF\0a\0\xAD\0b)"s);
  CHECK(text("\xF0\x90\x8C\x82") == "(\xFE\xFF\xD8\x00\xDF\x02)"s);
  CHECK(text("a\nb") == "(\xFE\xFF\0a\0\n\0b)"s);
  CHECK(text("þÿ") == "(\xFE\xFF\0\xFE\0\xFF)"s);  // else it would be taken for the mark of UTF-16
}

TEST_CASE("bytes stay what they are", "[pdf]") {
  CHECK(bytes("cell/393") == "(cell/393)");
  CHECK(bytes("a\rb") == "(a\\rb)");
  CHECK(bytes("\xC2\xB5)") == "(\xC2\xB5\\))");
}

TEST_CASE("names escape what a name may not hold", "[pdf]") {
  CHECK(name("Name1") == "/Name1");
  CHECK(name("Lime Green") == "/Lime#20Green");                                              // the reference's own example
  CHECK(name("A;Name_With-Various***Characters?") == "/A;Name_With-Various***Characters?");  // likewise
  CHECK(name("paired()parentheses") == "/paired#28#29parentheses");                          // likewise
  CHECK(name("The_Key_of_F#_Minor") == "/The_Key_of_F#23_Minor");                            // likewise
}

TEST_CASE("colours and boxes turn into the terms of the file", "[pdf]") {
  std::string out;
  append_color(out, {255, 0, 51});
  CHECK(out == "1 0 0.2");
  out.clear();
  append_box(out, {10'000, 20'000, 30'505, 40'000}, 100'000);
  CHECK(out == "[10 60 30.505 80]");  // the lower edge is 40 pt from the top of 100 pt
  out.clear();
  append_rough_box(out, {10'000, 20'000, 30'505, 40'000}, 100'000);
  CHECK(out == "[10 60 30.5 80]");
  out.clear();
  append_whole_box(out, {10'000, 20'400, 30'505, 40'000}, 100'000);
  CHECK(out == "[10 60 31 80]");
}

}  // namespace benchleaf::pdf
