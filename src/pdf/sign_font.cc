// In: the trust signs on the pages. Out: a font whose glyphs are their drawings (PDF Reference, third edition, 5.5.4), with the
// words that each stands for. As a letter a sign takes two bytes of content; as a figure, an element and its own lines.
#include "pdf/sign_font.h"

#include <map>
#include <string>
#include <variant>

#include "model/signs.h"
#include "page/drawing.h"
#include "pdf/painter.h"
#include "pdf/to_unicode.h"

namespace benchleaf::pdf {

namespace {

constexpr double kBoxMm = 10;      // a sign is drawn that wide
constexpr double kDeepestMm = 12;  // with the bar beneath
constexpr std::uint32_t kLastCode = 14;

/// One em of the font is the box, its units are points.
page::Length width() { return page::from_mm(kBoxMm); }

std::string glyph_of(const page::SignItem& sign, const FontBook& book) {
  std::string out;
  append_thousandths(out, width());
  out += " 0 d0\n";
  Painter painter(book, page::from_mm(kBoxMm * model::kSignBaseline), out);
  for (const model::Shape& shape : model::trust_sign(sign.trust, sign.derived).shapes) {
    if (const auto* path = std::get_if<model::PathShape>(&shape))
      painter.draw({page::kLayoutArtifact, page::place_path(*path, 1)});
  }
  return out;
}

std::string font_entries(const std::map<std::uint32_t, page::SignItem>& signs, const std::string& glyphs, ObjectNumber map) {
  const page::Length baseline = page::from_mm(kBoxMm * model::kSignBaseline);
  std::string out = "/Type/Font/Subtype/Type3/FontMatrix[.0352778 0 0 .0352778 0 0]/FontBBox";
  append_box(out, {0, 0, width(), page::from_mm(kDeepestMm)}, baseline);
  out += "/CharProcs<<" + glyphs + ">>/Encoding<</Type/Encoding/Differences[";
  for (const auto& [code, sign] : signs) {
    append_integer(out, code);
    out += "/s" + std::to_string(code) + " ";
  }
  out += "]>>/FirstChar 1/LastChar ";
  append_integer(out, kLastCode);
  out += "/Widths[";
  for (std::uint32_t code = 1; code <= kLastCode; ++code) {
    if (code > 1) out += ' ';
    append_thousandths(out, signs.count(code) > 0 ? width() : 0);
  }
  out += "]/Resources<<>>/ToUnicode ";
  append_reference(out, map);
  return out;
}

}  // namespace

std::uint32_t sign_code(const page::SignItem& sign) {
  return 1 + 2 * static_cast<std::uint32_t>(sign.trust) + (sign.derived ? 1 : 0);
}

ObjectNumber add_sign_font(const std::vector<page::SignItem>& shown, const FontBook& book, HaruFile& file) {
  std::map<std::uint32_t, page::SignItem> signs;
  for (const page::SignItem& sign : shown) signs.emplace(sign_code(sign), sign);
  if (signs.empty()) return 0;
  // Codes between those in use are of no sign.
  std::string glyphs = "/.notdef ";
  append_reference(glyphs, file.add_stream({}, "0 0 d0\n", HaruFile::Packing::none));
  CodeTexts words;
  for (const auto& [code, sign] : signs) {
    glyphs += " /s" + std::to_string(code) + " ";
    append_reference(glyphs, file.add_stream({}, glyph_of(sign, book), HaruFile::Packing::flate));
    words.emplace(code, "(" + model::trust_words(sign.trust, sign.derived) + ")");
  }
  const ObjectNumber map = file.add_stream({}, to_unicode(words, 1), HaruFile::Packing::flate);
  return file.add_dictionary(font_entries(signs, glyphs, map));
}

}  // namespace benchleaf::pdf
