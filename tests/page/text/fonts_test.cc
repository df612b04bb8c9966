// The fonts of the book: measures as their files state them, files that are no fonts, roles without a file.
#include "page/text/fonts.h"

#include "page/text/style.h"
#include "page/text/text_support.h"
#include "support/catch.h"

using namespace benchleaf;
using page::Face;

namespace {

std::vector<report::Rule> rules(const report::Findings& findings) {
  std::vector<report::Rule> result;
  for (const report::Finding& finding : findings.all()) result.push_back(finding.rule);
  return result;
}

}  // namespace

TEST_CASE("the book's fonts open without a finding") {
  report::Findings findings;
  const page::FontSet fonts = page::FontSet::open(test::font_files(), findings);
  CHECK(findings.all().empty());
  CHECK(fonts.complete());
  CHECK(fonts.size() == 10);
}

// The figures were read from the font files with fontTools (tables head, hhea, OS/2, post; yMax of the glyph H).
TEST_CASE("measures of a font are those of its tables") {
  const page::FontSet& fonts = test::book_fonts();
  const page::FontMetrics& text = fonts.metrics(fonts.index(Face::text));
  CHECK(text.postscript_name == "Roboto-Regular");
  CHECK(text.units_per_em == 2048);
  CHECK(text.ascent == 1900);
  CHECK(text.descent == -500);
  CHECK(text.cap_height == 1456);
  CHECK(text.x_height == 1082);
  CHECK(text.weight == 400);
  CHECK(text.italic_angle == 0);
  CHECK_FALSE(text.fixed_pitch);
  CHECK(fonts.metrics(fonts.index(Face::text_italic)).italic_angle == -12);
  CHECK(fonts.metrics(fonts.index(Face::condensed_bold)).weight == 700);
  CHECK(fonts.metrics(fonts.index(Face::condensed_bold)).postscript_name == "RobotoCondensed-Bold");
  const page::FontMetrics& mono = fonts.metrics(fonts.index(Face::mono));
  CHECK(mono.postscript_name == "DejaVuSansMono");
  CHECK(mono.fixed_pitch);
  CHECK(mono.cap_height == 1493);
}

TEST_CASE("a baseline stands in the middle of its line") {
  page::TextStyle style;
  style.size = 2048;
  style.leading = 3000;
  // 1900 above and 500 below leave 600, half of it above
  CHECK(page::baseline_in_line(test::book_fonts(), style) == 2200);
  CHECK(page::cap_height(test::book_fonts(), style) == 1456);
  CHECK(page::from_units(1, 1000, 2000) == 1);
  CHECK(page::from_units(-3, 1000, 2000) == -1);
  CHECK(page::from_units(-1, 1000, 4000) == 0);
}

TEST_CASE("bytes that are no font are a finding and leave their role without one") {
  const std::string good = test::font_files().front().bytes;
  for (const std::string& bytes :
       {std::string(), std::string("OTTO and no more"), std::string("\0\1\0\0", 4), good.substr(0, 200)}) {
    std::vector<page::FontFile> files = test::font_files();
    files.front().bytes = bytes;
    report::Findings findings;
    const page::FontSet fonts = page::FontSet::open(std::move(files), findings);
    CHECK_FALSE(fonts.complete());
    CHECK(rules(findings) == std::vector{report::Rule::font_unusable, report::Rule::font_missing});
  }
}

TEST_CASE("a second font for a role is a finding") {
  std::vector<page::FontFile> files = test::font_files();
  files.push_back(files.front());
  report::Findings findings;
  const page::FontSet fonts = page::FontSet::open(std::move(files), findings);
  CHECK(rules(findings) == std::vector{report::Rule::font_unusable});
}

// OpenType, OS/2 table, fsType: value 2 in bits 0 to 3 is "restricted licence embedding"
TEST_CASE("a font that may not be embedded is a finding") {
  std::vector<page::FontFile> files = test::font_files();
  std::string& bytes = files.front().bytes;
  for (std::size_t at = 12; at < 12 + 16 * 20; at += 16) {
    if (bytes.compare(at, 4, "OS/2") != 0) continue;
    std::size_t offset = 0;
    for (std::size_t i = 8; i < 12; ++i) offset = offset << 8 | static_cast<unsigned char>(bytes[at + i]);
    bytes[offset + 9] = 2;
  }
  report::Findings findings;
  const page::FontSet fonts = page::FontSet::open(std::move(files), findings);
  CHECK(rules(findings) == std::vector{report::Rule::font_embedding, report::Rule::font_missing});
}

TEST_CASE("roles have names") {
  CHECK(page::face_named("condensed-bold") == Face::condensed_bold);
  CHECK(page::face_named("symbol-bold") == Face::symbol_bold);
  CHECK_FALSE(page::face_named("text-medium"));
  CHECK(page::face_name(Face::text_bold_italic) == "text-bold-italic");
}
