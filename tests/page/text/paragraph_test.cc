// Paragraphs as the layout gets them: places of lines and glyphs, what may be parted and what may not.
#include "page/text/paragraph.h"

#include <cmath>
#include <ctime>
#include <iostream>
#include <random>

#include "page/text/text_support.h"
#include "support/catch.h"

using namespace benchleaf;
using page::Align;
using page::Face;
using test::body;

namespace {

const std::string kProse =
    "A silver-oxide cell that has leaked leaves a white crust of potassium carbonate. Moisten the residue with a little "
    "diluted vinegar before anything is loosened, blot it, and never scrape at a dry crust: the particles reach the "
    "movement. Afterwards the compartment is rinsed, dried, and inspected under magnification for corrosion of the "
    "contact springs and of the insulating foil underneath the battery strap.";

page::TextSetter& setter() {
  static page::TextSetter kSetter(test::book_fonts(), &test::book_hyphenator());
  return kSetter;
}

page::SetParagraph set(const std::string& text, double mm, Align align = Align::justify) {
  page::ParagraphOptions options;
  options.width = static_cast<page::Length>(mm * 72000 / 25.4);
  options.align = align;
  return setter().set(body(text), options);
}

std::string all_text(const page::SetParagraph& paragraph) {
  std::string text;
  for (const page::SetLine& line : paragraph.lines) text += test::line_text(line);
  return text;
}

std::string without(std::string text, const std::string& part) {
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at)) text.erase(at, part.size());
  return text;
}

const std::string kSoftHyphen = "\xC2\xAD";

}  // namespace

TEST_CASE("justified lines end at the margin, to a thousandth of a point") {
  for (const double mm : {71.5, 97.0, 148.0}) {
    const page::SetParagraph paragraph = set(kProse, mm);
    const auto width = static_cast<page::Length>(mm * 72000 / 25.4);
    REQUIRE(paragraph.lines.size() > 2);
    for (std::size_t i = 0; i + 1 < paragraph.lines.size(); ++i) {
      CHECK(paragraph.lines[i].width == width);
      CHECK(std::fabs(test::ink_end(paragraph.lines[i]) - static_cast<double>(width)) <= 1.0);
      CHECK(paragraph.lines[i].too_wide == 0);
    }
    CHECK(paragraph.lines.back().width <= width);
  }
}

TEST_CASE("no letter is lost or doubled at line ends, and words stay apart") {
  for (const Align align : {Align::justify, Align::left, Align::right, Align::centre}) {
    for (int mm = 15; mm < 160; mm += 7) {
      CHECK(without(all_text(set(kProse, mm, align)), kSoftHyphen) == kProse);
    }
  }
}

TEST_CASE("ragged lines: no space is stretched, alignment moves the line") {
  const page::Length width = page::Length{148} * 72000 * 10 / 254;
  const page::SetParagraph left = set(kProse, 148, Align::left);
  const page::SetParagraph right = set(kProse, 148, Align::right);
  const page::SetParagraph centre = set(kProse, 148, Align::centre);
  REQUIRE(left.lines.size() == right.lines.size());
  for (std::size_t i = 0; i < left.lines.size(); ++i) {
    CHECK(left.lines[i].left == 0);
    CHECK(left.lines[i].width == Approx(test::ink_end(left.lines[i])).margin(1));
    CHECK(right.lines[i].left + right.lines[i].width == Approx(width).margin(1));
    CHECK(centre.lines[i].left * 2 + centre.lines[i].width == Approx(width).margin(2));
    for (const page::PlacedPiece& placed : left.lines[i].pieces) {
      for (const page::Glyph& glyph : std::get<page::TextItem>(placed.what).glyphs) CHECK(glyph.extra == 0);
    }
  }
}

TEST_CASE("value, thin space and unit are never parted, at 200 widths") {
  std::mt19937 random(626);
  const std::vector<std::string> values = {"7.9\xE2\x80\x89mm",
                                           "1.55\xE2\x80\x89V",
                                           "25\xE2\x80\x89%",
                                           "0.5\xC2\xA0to\xC2\xA0"
                                           "0.7\xE2\x80\x89mm",
                                           "20\xE2\x80\x89\xC2\xB0"
                                           "C",
                                           "1+20",
                                           "SR626SW",
                                           "10\xE2\x80\x89"
                                           "000\xE2\x80\x89h",
                                           "2026-11-01"};
  for (int i = 0; i < 200; ++i) {
    std::string text;
    for (int word = 0; word < 40; ++word) {
      text += word % 3 == 2 ? values[random() % values.size()]
                            : std::string(1 + random() % 9, static_cast<char>('a' + random() % 26));
      text += ' ';
    }
    const double mm = 15 + static_cast<double>(random() % 1500) / 10;
    const page::SetParagraph paragraph = set(text, mm, i % 2 == 0 ? Align::justify : Align::left);
    std::string whole = all_text(paragraph);
    // every value stands in one line as often as it was written
    for (const std::string& value : values) {
      int written = 0;
      int found = 0;
      for (std::size_t at = text.find(value); at != std::string::npos; at = text.find(value, at + 1)) ++written;
      for (const page::SetLine& line : paragraph.lines) {
        const std::string words = test::line_text(line);
        for (std::size_t at = words.find(value); at != std::string::npos; at = words.find(value, at + 1)) ++found;
      }
      CHECK(found == written);
    }
    CHECK(without(whole, kSoftHyphen) + " " == text);
  }
}

TEST_CASE("a hyphen at a line end reads as a soft hyphen and is drawn as a hyphen") {
  const page::SetParagraph paragraph = set(kProse, 30);
  int hyphens = 0;
  for (const page::SetLine& line : paragraph.lines) {
    const std::string text = test::line_text(line);
    if (text.size() < 2 || text.substr(text.size() - 2) != kSoftHyphen) continue;
    ++hyphens;
    const auto& item = std::get<page::TextItem>(line.pieces.back().what);
    CHECK(item.glyphs.back().id == test::book_fonts().glyph(item.font, U'\u00AD'));
    CHECK(item.glyphs.back().advance > 400);
    CHECK(item.glyphs.back().cluster == item.text.size() - 2);
  }
  CHECK(hyphens > 0);
  page::ParagraphOptions options;
  options.width = 85000;
  options.hyphenate = false;
  CHECK(all_text(setter().set(body(kProse), options)) == kProse);
}

TEST_CASE("a wide line has nothing in it that can be parted") {
  const page::SetParagraph paragraph = set("short words Unbreakable1234567890designation short words again", 14, Align::left);
  CHECK(paragraph.too_wide());
  int wide = 0;
  for (const page::SetLine& line : paragraph.lines) {
    if (line.too_wide == 0) continue;
    ++wide;
    CHECK(test::line_text(line) == "Unbreakable1234567890designation ");
    CHECK(line.too_wide == line.width - static_cast<page::Length>(14 * 72000 / 25.4));
  }
  CHECK(wide == 1);
}

TEST_CASE("at any width a line overruns only by a part that cannot be broken") {
  const page::Length least = setter().minimum_width(body(kProse));
  for (page::Length width = least; width < least + 60000; width += 1777) {
    page::ParagraphOptions options;
    options.width = width;
    for (const Align align : {Align::left, Align::justify}) {
      options.align = align;
      const page::SetParagraph paragraph = setter().set(body(kProse), options);
      CHECK_FALSE(paragraph.too_wide());
      for (const page::SetLine& line : paragraph.lines) CHECK(test::ink_end(line) <= static_cast<double>(width) + 1);
    }
  }
}

TEST_CASE("pieces keep tag, link, anchor, colour and rise; boxes keep their number") {
  std::vector<page::Piece> pieces = body("See ");
  page::Piece link;
  link.text = "the liquid entry \xE2\x9A\xA0 for it";
  link.style.color = {91, 38, 80};
  link.style.rise = 500;
  link.tag = 7;
  link.link = "chemistry/vinegar";
  link.anchor = "here";
  pieces.push_back(link);
  page::Piece sign;
  sign.box = page::InlineBox{7000, 6000, 1000, 42};
  sign.tag = 8;
  pieces.push_back(sign);
  const page::SetParagraph paragraph = setter().set(pieces, {.width = 60000});
  int anchors = 0;
  int boxes = 0;
  for (const page::SetLine& line : paragraph.lines) {
    page::Length x = 0;
    for (const page::PlacedPiece& placed : line.pieces) {
      CHECK(placed.x == x);
      x += placed.width;
      if (placed.anchor == "here") ++anchors;
      if (const auto* box = std::get_if<page::InlineBox>(&placed.what)) {
        ++boxes;
        CHECK(box->index == 42);
        CHECK(placed.tag == 8);
      } else if (placed.piece == 1) {
        const auto& item = std::get<page::TextItem>(placed.what);
        CHECK(placed.tag == 7);
        CHECK(placed.link == "chemistry/vinegar");
        CHECK(item.color == link.style.color);
        CHECK(item.at.y == -500);
        CHECK(item.at.x == placed.x);
      }
    }
    CHECK(x == line.width);
  }
  CHECK(paragraph.lines.size() > 1);
  CHECK(anchors == 1);
  CHECK(boxes == 1);
}

TEST_CASE("lines follow each other by their leading; a tall box pushes them apart") {
  const page::SetParagraph plain = setter().set(body("one\ntwo\n\nfour"), {.width = 200000});
  REQUIRE(plain.lines.size() == 4);
  for (std::size_t i = 0; i < 4; ++i) CHECK(plain.lines[i].top == static_cast<page::Length>(i) * 13000);
  CHECK(plain.height == 52000);
  CHECK(plain.lines[1].baseline - plain.lines[0].baseline == 13000);
  CHECK(plain.lines[2].pieces.empty());
  std::vector<page::Piece> pieces = body("tall ");
  page::Piece box;
  box.box = page::InlineBox{10000, 30000, 9000, 0};
  pieces.push_back(box);
  const page::SetParagraph tall = setter().set(pieces, {.width = 200000});
  REQUIRE(tall.lines.size() == 1);
  CHECK(tall.lines[0].baseline == 30000);
  CHECK(tall.height == 39000);
}

TEST_CASE("first lines may be narrower and begin further right") {
  page::ParagraphOptions options;
  options.width = 300000;
  options.first_lines = {{150000, 150000}, {200000, 100000}};
  options.align = Align::justify;
  const page::SetParagraph paragraph = setter().set(body(kProse), options);
  REQUIRE(paragraph.lines.size() > 3);
  CHECK(paragraph.lines[0].left == 150000);
  CHECK(paragraph.lines[0].width == 150000);
  CHECK(paragraph.lines[1].left == 100000);
  CHECK(paragraph.lines[1].width == 200000);
  CHECK(paragraph.lines[2].left == 0);
  CHECK(paragraph.lines[2].width == 300000);
}

TEST_CASE("soft hyphens, free breaks and joiners are the writer's own") {
  page::ParagraphOptions options;
  options.width = 40000;
  options.hyphenate = false;
  CHECK(all_text(setter().set(body("SR626\xC2\xAD"
                                   "SW9999"),
                              options)) == "SR626" + kSoftHyphen + "SW9999");
  CHECK(setter().set(body("SR626\xE2\x80\x8BSW9999"), options).lines.size() == 2);
  CHECK(setter().set(body("water-\xE2\x81\xA0tight"), options).lines.size() == 1);
  CHECK(setter().set(body("water-tight"), options).lines.size() == 2);
}

TEST_CASE("no line begins with a dash") {
  for (int mm = 12; mm < 60; ++mm) {
    const page::SetParagraph paragraph =
        set("rinse it \xE2\x80\x93 never dry \xE2\x80\x94 then blot \xE2\x80\x93 wait", mm, Align::left);
    for (const page::SetLine& line : paragraph.lines) CHECK(test::line_text(line).substr(0, 2) != "\xE2\x80");
  }
}

TEST_CASE("missing glyphs come with their piece and word") {
  std::vector<page::Piece> pieces = body("known ");
  page::Piece second = pieces[0];
  second.text = "un\xE4\xBD\xA0known words";
  pieces.push_back(second);
  const page::SetParagraph paragraph = setter().set(pieces, {.width = 400000});
  REQUIRE(paragraph.missing.size() == 1);
  CHECK(paragraph.missing[0].piece == 1);
  CHECK(paragraph.missing[0].code == U'\u4F60');
  CHECK(paragraph.missing[0].text == "un\xE4\xBD\xA0known");
}

TEST_CASE("the same paragraph is set the same, whatever was set before") {
  page::TextSetter other(test::book_fonts(), &test::book_hyphenator());
  const page::ParagraphOptions options{.width = 90000, .align = Align::justify};
  const page::SetParagraph first = other.set(body(kProse), options);
  (void)other.set(body("something else " + kProse), options);
  const page::SetParagraph again = other.set(body(kProse), options);
  REQUIRE(first.lines.size() == again.lines.size());
  for (std::size_t i = 0; i < first.lines.size(); ++i) {
    CHECK(test::line_text(first.lines[i]) == test::line_text(again.lines[i]));
    CHECK(first.lines[i].width == again.lines[i].width);
  }
}

TEST_CASE("speed: 100,000 words, told and not judged") {
  std::mt19937 random(100000);
  std::vector<std::string> words;
  std::string word;
  for (const char c : kProse) {
    if (c == ' ') {
      words.push_back(word);
      word.clear();
    } else {
      word += c;
    }
  }
  for (int i = 0; i < 4000; ++i)
    words.push_back("w" + std::string(1 + random() % 8, static_cast<char>('a' + random() % 26)) + std::to_string(i));
  for (const Align align : {Align::justify, Align::left}) {
    page::TextSetter fresh(test::book_fonts(), &test::book_hyphenator());
    std::size_t lines = 0;
    const std::clock_t start = std::clock();
    for (int paragraph = 0; paragraph < 1000; ++paragraph) {
      std::string text;
      for (int i = 0; i < 100; ++i) text += words[random() % words.size()] + " ";
      lines += fresh.set(body(text), {.width = 420000, .align = align}).lines.size();
    }
    const double seconds = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    std::cout << "100,000 words " << (align == Align::justify ? "justified" : "ragged") << ": " << lines << " lines in "
              << seconds << " s of processor time\n";
    CHECK(lines > 1000);
  }
}
