// Texts that nobody means to write: nothing crashes, no letter is lost, no time is wasted.
#include <random>

#include "page/text/paragraph.h"
#include "page/text/text_support.h"
#include "support/catch.h"

using namespace benchleaf;
using page::Align;
using test::body;

namespace {

page::TextSetter& setter() {
  static page::TextSetter kSetter(test::book_fonts(), &test::book_hyphenator());
  return kSetter;
}

page::SetParagraph set_all_ways(const std::vector<page::Piece>& pieces, page::Length width) {
  for (const Align align : {Align::left, Align::right, Align::centre})
    (void)setter().set(pieces, {.width = width, .align = align});
  std::vector<page::MissingGlyph> missing;
  (void)page::decimal_points(test::book_fonts(), setter().set_line(pieces, missing));
  CHECK(setter().minimum_width(pieces) <= setter().natural_width(pieces) + 10000);
  return setter().set(pieces, {.width = width, .align = Align::justify});
}

}  // namespace

TEST_CASE("nothing and only spaces set no line") {
  CHECK(set_all_ways({}, 100000).lines.empty());
  CHECK(set_all_ways(body(""), 100000).lines.empty());
  CHECK(set_all_ways(body("      \t \r "), 100000).lines.empty());
  CHECK(set_all_ways(body("\xC2\xAD\xE2\x80\x8B\xE2\x81\xA0"), 100000).lines.empty());
  CHECK(set_all_ways(body("\n"), 100000).lines.size() == 1);
  CHECK(set_all_ways(body("\xC2\xA0"), 100000).lines.size() == 1);
  std::vector<page::Piece> empties(50);
  CHECK(set_all_ways(empties, 100000).lines.empty());
}

TEST_CASE("a word of 10,000 letters is one line, too wide") {
  const page::SetParagraph paragraph = set_all_ways(body("before " + std::string(10000, 'x') + " behind"), 100000);
  CHECK(paragraph.too_wide());
  CHECK(paragraph.lines.size() == 3);
}

TEST_CASE("no width at all sets every part on a line of its own") {
  for (const page::Length width : {page::Length{0}, page::Length{-5000}, page::Length{1}}) {
    const page::SetParagraph paragraph = set_all_ways(body("three short words"), width);
    CHECK(paragraph.too_wide());
    CHECK(paragraph.lines.size() >= 3);
  }
}

TEST_CASE("combining marks, right-to-left text, emoji and ill-formed bytes are set") {
  const std::string heap = "e" + [] {
    std::string marks;
    for (int i = 0; i < 500; ++i) marks += "\xCC\x81";
    return marks;
  }();
  CHECK(set_all_ways(body(heap + " " + heap), 100000).lines.size() == 1);
  const page::SetParagraph right_to_left =
      set_all_ways(body("\xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D \xD8\xB3\xD9\x84\xD8\xA7\xD9\x85 mixed"), 100000);
  REQUIRE(right_to_left.lines.size() == 1);
  CHECK(test::line_text(right_to_left.lines[0]) == "\xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D \xD8\xB3\xD9\x84\xD8\xA7\xD9\x85 mixed");
  (void)set_all_ways(
      body("\xF0\x9F\x91\xA9\xE2\x80\x8D\xF0\x9F\x94\xA7 \xF0\x9F\x87\xAC\xF0\x9F\x87\xA7 \xE2\x9A\xA0\xEF\xB8\x8F"), 30000);
  (void)set_all_ways(body("\xFF\xFE\x80 broken \xC3"), 30000);
  (void)set_all_ways(body(std::string("nul \0 inside", 12)), 30000);
  (void)set_all_ways(body("\xCC\x81 mark first \xC2\xAD- \xE2\x80\x8B/"), 30000);
}

TEST_CASE("boxes alone, boxes side by side, and boxes wider than the line") {
  page::Piece box;
  box.box = page::InlineBox{40000, 5000, 1000, 1};
  CHECK(set_all_ways({box}, 100000).lines.size() == 1);
  CHECK(set_all_ways({box, box, box}, 100000).too_wide());
  CHECK(set_all_ways({box}, 10000).too_wide());
}

TEST_CASE("random bytes from signs that matter, in random pieces and widths") {
  const std::vector<std::string> parts = {"a",
                                          "Z",
                                          "fi",
                                          "7",
                                          " ",
                                          "  ",
                                          "\n",
                                          "\t",
                                          "-",
                                          "/",
                                          "\xE2\x80\x93",
                                          "\xC2\xA0",
                                          "\xE2\x80\x89",
                                          "\xC2\xAD",
                                          "\xE2\x80\x8B",
                                          "\xE2\x81\xA0",
                                          ".",
                                          "handbook",
                                          "\xCC\x81",
                                          "\xE2\x9A\xA0",
                                          "\xE4\xBD\xA0",
                                          "\xFF",
                                          "://",
                                          "www."};
  std::mt19937 random(4711);
  for (int round = 0; round < 3000; ++round) {
    std::vector<page::Piece> pieces(random() % 5);
    std::string written;
    for (page::Piece& piece : pieces) {
      if (random() % 6 == 0) piece.box = page::InlineBox{static_cast<page::Length>(random() % 30000), 5000, 0, 0};
      for (std::size_t i = random() % 20; i > 0; --i) piece.text += parts[random() % parts.size()];
    }
    const page::SetParagraph paragraph = set_all_ways(pieces, static_cast<page::Length>(random() % 90000));
    page::Length top = 0;
    for (const page::SetLine& line : paragraph.lines) {
      CHECK(line.top == top);
      top += line.height;
      for (const page::PlacedPiece& placed : line.pieces) {
        const auto* item = std::get_if<page::TextItem>(&placed.what);
        if (item == nullptr) continue;
        for (const page::Glyph& glyph : item->glyphs) REQUIRE(glyph.cluster < item->text.size());
      }
    }
    CHECK(paragraph.height == top);
  }
}
