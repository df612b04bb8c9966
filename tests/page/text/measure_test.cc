// Measures for table columns, held against the same text set in other ways.
#include "page/text/paragraph.h"
#include "page/text/text_support.h"
#include "support/catch.h"

using namespace benchleaf;
using page::Face;
using test::body;

namespace {

page::TextSetter& setter() {
  static page::TextSetter kSetter(test::book_fonts(), &test::book_hyphenator());
  return kSetter;
}

page::SetLine line_of(const std::string& text, Face face = Face::condensed) {
  std::vector<page::MissingGlyph> missing;
  return setter().set_line(body(text, face), missing);
}

page::Length width_of(const std::string& text) {
  page::TextStyle style;
  style.face = Face::condensed;
  return setter().shaper().width(text, style);
}

}  // namespace

TEST_CASE("a single line is as wide as its words and spaces") {
  const page::SetLine line = line_of("SR754W silver oxide");
  CHECK(line.width == Approx(width_of("SR754W") + width_of("silver") + width_of("oxide") + 2 * width_of(" ")).margin(3));
  CHECK(line.width == Approx(test::ink_end(line)).margin(1));
  CHECK(line.height == 13000);
  CHECK(test::line_text(line) == "SR754W silver oxide");
  REQUIRE(line.pieces.size() == 1);
}

TEST_CASE("natural width is that of the longest forced line") {
  CHECK(setter().natural_width(body("one two\nthree four five\nsix", Face::condensed)) ==
        Approx(line_of("three four five").width).margin(3));
  CHECK(setter().natural_width({}) == 0);
}

TEST_CASE("minimum width is that of the widest part that stays whole") {
  CHECK(setter().minimum_width(body("a SR626SW9999999 bb", Face::condensed)) == width_of("SR626SW9999999"));
  CHECK(setter().minimum_width(body("12.5\xE2\x80\x89mm of it", Face::condensed)) == width_of("12.5\xE2\x80\x89mm"));
  const page::Length whole = setter().minimum_width(body("identification", Face::condensed), false);
  CHECK(whole == width_of("identification"));
  CHECK(setter().minimum_width(body("identification", Face::condensed), true) < whole);
  CHECK(setter().minimum_width({}) == 0);
}

TEST_CASE("height for a width is that of the paragraph") {
  const auto pieces = body("one two three four five six seven eight nine ten");
  CHECK(setter().height(pieces, {.width = 100000}) == setter().set(pieces, {.width = 100000}).height);
  CHECK(setter().height(pieces, {.width = 50000}) > setter().height(pieces, {.width = 200000}));
}

TEST_CASE("decimal points stand behind the whole part of each number") {
  const page::FontSet& fonts = test::book_fonts();
  const auto near = [](page::Length x) { return Approx(x).margin(3); };
  const auto points = page::decimal_points(fonts, line_of("12.5 to 4.40"));
  REQUIRE(points.size() == 2);
  CHECK(points[0] == near(width_of("12.5") - width_of(".5")));
  CHECK(points[1] == near(width_of("12.5") + width_of("to") + 2 * width_of(" ") + width_of("4")));
  const auto whole = page::decimal_points(fonts, line_of("10\xE2\x80\x89"
                                                         "000\xE2\x80\x89h"));
  REQUIRE(whole.size() == 1);
  CHECK(whole[0] == near(width_of("10\xE2\x80\x89"
                                  "000")));
  CHECK(page::decimal_points(fonts, line_of("SR626SW")).empty());
  CHECK(page::decimal_points(fonts, line_of("not known")).empty());
  CHECK(page::decimal_points(fonts, line_of("1+20")).size() == 2);
  CHECK(page::decimal_points(fonts, line_of("\xE2\x88\x92"
                                            "0.5."))
            .size() == 1);
}

TEST_CASE("numbers with tabular figures align: equal digits, equal width") {
  const page::FontSet& fonts = test::book_fonts();
  CHECK(page::decimal_points(fonts, line_of("11.6")) == page::decimal_points(fonts, line_of("74.4")));
}

TEST_CASE("a space at the end and a line end in a cell do not count") {
  CHECK(line_of("cell ").width == line_of("cell").width);
  CHECK(line_of("a\nb").width == line_of("a b").width);
  CHECK(line_of("").width == 0);
  CHECK(line_of("").height == 13000);
}
