// Expected: PDF Reference, third edition (PDF 1.4), 3.2.2 numbers, 3.2.3 strings, 3.2.4 names, 3.8.1 text strings; UTF-16 by
// the Unicode Standard, section 3.9 (U+10302 is D800 DF02 in its table 3-4).
#include "pdf/syntax.h"

#include <cstdint>
#include <limits>
#include <string>

#include "support/catch.h"

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

TEST_CASE("texts are ASCII or UTF-16", "[pdf]") {
  CHECK(text("Cells") == "(Cells)");
  CHECK(text("a (b) \\ c") == "(a \\(b\\) \\\\ c)");
  CHECK(text("") == "()");
  CHECK(text("µ") == "<FEFF00B5>");
  CHECK(text("\xF0\x90\x8C\x82") == "<FEFFD800DF02>");
  CHECK(text("a\nb") == "<FEFF0061000A0062>");
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
  append_box(out, {10'000, 20'000, 30'500, 40'000}, 100'000);
  CHECK(out == "[10 60 30.5 80]");  // the lower edge is 40 pt from the top of 100 pt
}

}  // namespace benchleaf::pdf
