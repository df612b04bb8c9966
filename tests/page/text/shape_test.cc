// Words in glyphs, held against HarfBuzz called by itself.
#include "page/text/shape.h"

#include <hb.h>

#include "base/utf8.h"
#include "page/text/text_support.h"
#include "support/catch.h"

using namespace benchleaf;
using page::Face;

namespace {

/// What HarfBuzz makes of a text when it guesses direction and script, with its default features.
struct Plain {
  long advance = 0;
  unsigned glyphs = 0;
};

Plain by_harfbuzz(Face face, const std::string& text) {
  const page::FontSet& fonts = test::book_fonts();
  const std::string& bytes = fonts.bytes(fonts.index(face));
  hb_blob_t* blob = hb_blob_create(bytes.data(), static_cast<unsigned>(bytes.size()), HB_MEMORY_MODE_READONLY, nullptr, nullptr);
  hb_face_t* hb_face = hb_face_create(blob, 0);
  hb_font_t* font = hb_font_create(hb_face);
  hb_buffer_t* buffer = hb_buffer_create();
  hb_buffer_add_utf8(buffer, text.data(), static_cast<int>(text.size()), 0, -1);
  hb_buffer_guess_segment_properties(buffer);
  hb_shape(font, buffer, nullptr, 0);
  Plain plain;
  const hb_glyph_position_t* positions = hb_buffer_get_glyph_positions(buffer, &plain.glyphs);
  for (unsigned i = 0; i < plain.glyphs; ++i) plain.advance += positions[i].x_advance;
  hb_buffer_destroy(buffer);
  hb_font_destroy(font);
  hb_face_destroy(hb_face);
  hb_blob_destroy(blob);
  return plain;
}

page::FontIndex font_of(Face face) { return test::book_fonts().index(face); }

}  // namespace

TEST_CASE("widths with kerning and ligatures are HarfBuzz's own") {
  page::Shaper shaper(test::book_fonts());
  for (const Face face : {Face::text, Face::text_bold, Face::condensed, Face::condensed_bold, Face::mono, Face::symbol}) {
    for (const char* text : {"AVATAR", "Tyre", "office", "affluent", "fjord-filter", "To", "LTV", "3.6", "Wax,", "caf\xC3\xA9"}) {
      const page::ShapedText& shaped = shaper.shape(text, face);
      const Plain plain = by_harfbuzz(face, text);
      REQUIRE(shaped.runs.size() == 1);
      CHECK(shaped.runs[0].advance == plain.advance);
      CHECK(shaped.runs[0].glyphs.size() == plain.glyphs);
    }
  }
}

TEST_CASE("kerning is there: a pair is narrower than its letters") {
  page::Shaper shaper(test::book_fonts());
  const page::TextStyle style;
  CHECK(shaper.width("AV", style) < shaper.width("A", style) + shaper.width("V", style));
}

TEST_CASE("clusters name the first byte of the letter a glyph stands for") {
  page::Shaper shaper(test::book_fonts());
  const page::ShapedText& shaped = shaper.shape("a\xC3\xA9z", Face::text);
  REQUIRE(shaped.runs.size() == 1);
  REQUIRE(shaped.runs[0].glyphs.size() == 3);
  CHECK(shaped.runs[0].glyphs[1].cluster == 1);
  CHECK(shaped.runs[0].glyphs[2].cluster == 3);
}

TEST_CASE("signs that the text faces lack come from the symbol face") {
  page::Shaper shaper(test::book_fonts());
  for (const char32_t code :
       {U'\u26A0', U'\u2300', U'\u2190', U'\u2192', U'\u2193', U'\u2713', U'\u2717', U'\u25CB', U'\u2205'}) {
    const std::string text = "a" + base::to_utf8(code) + "b";
    const page::ShapedText& plain = shaper.shape(text, Face::text);
    REQUIRE(plain.runs.size() == 3);
    CHECK(plain.runs[0].font == font_of(Face::text));
    CHECK(plain.runs[1].font == font_of(Face::symbol));
    CHECK(plain.runs[1].glyphs.at(0).id == test::book_fonts().glyph(font_of(Face::symbol), code));
    CHECK(plain.runs[2].font == font_of(Face::text));
    CHECK(plain.missing.empty());
    CHECK(shaper.shape(text, Face::condensed_bold).runs.at(1).font == font_of(Face::symbol_bold));
  }
}

TEST_CASE("figures are equally wide, in every text face") {
  page::Shaper shaper(test::book_fonts());
  for (const Face face :
       {Face::text, Face::text_italic, Face::text_bold, Face::condensed, Face::condensed_bold, Face::mono, Face::symbol}) {
    const std::int64_t zero = shaper.shape("0", face).runs.at(0).advance;
    for (const char* digit : {"1", "2", "3", "4", "5", "6", "7", "8", "9"})
      CHECK(shaper.shape(digit, face).runs.at(0).advance == zero);
  }
  CHECK(shaper.shape("1", Face::text, false).runs.at(0).advance < shaper.shape("1", Face::text, true).runs.at(0).advance);
}

TEST_CASE("a letter and its marks stay in one font") {
  page::Shaper shaper(test::book_fonts());
  const page::ShapedText& shaped = shaper.shape("x\xCC\x81y", Face::text);
  CHECK(shaped.runs.size() == 1);
  CHECK(shaped.missing.empty());
}

TEST_CASE("what no font has is told, each time it is asked for") {
  page::Shaper shaper(test::book_fonts());
  for (int time = 0; time < 2; ++time) {
    const page::ShapedText& shaped = shaper.shape("a\xE4\xBD\xA0z", Face::text);  // U+4F60
    CHECK(shaped.missing == std::vector<char32_t>{U'\u4F60'});
    CHECK(shaped.runs.size() == 1);
  }
  report::Findings findings;
  page::report_missing({{0, U'\u4F60', "a\xE4\xBD\xA0z"}}, {}, findings);
  REQUIRE(findings.all().size() == 1);
  CHECK(findings.all()[0].rule == report::Rule::font_missing_glyph);
  CHECK(findings.all()[0].message == "no font has U+4F60 in `a\xE4\xBD\xA0z`");
}

TEST_CASE("characters that only say where to break leave no glyph") {
  page::Shaper shaper(test::book_fonts());
  CHECK(shaper
            .shape("hand\xC2\xAD"
                   "book\xE2\x80\x8B\xE2\x81\xA0",
                   Face::text)
            .text == "handbook");
}

TEST_CASE("tracking and size go into the width") {
  page::Shaper shaper(test::book_fonts());
  page::TextStyle style;
  style.size = 2048000;
  const page::ShapedText& shaped = shaper.shape("AVA", Face::text);
  CHECK(shaper.width(shaped, style) == shaped.runs.at(0).advance * 1000);
  style.tracking = -200;
  CHECK(shaper.width(shaped, style) == shaped.runs.at(0).advance * 1000 - 600);
  CHECK(shaper.width_before(shaped, 0, style) == 0);
  CHECK(shaper.width_before(shaped, 3, style) == shaper.width(shaped, style));
}
