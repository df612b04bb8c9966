// In: the fonts, and which glyphs of each stand for which text. Out: for every font in use the objects of a Type 0 font with
// a TrueType program (PDF Reference, third edition, 5.6), and the codes by which content streams show its glyphs.
#include "pdf/fonts.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string_view>

#include "base/sha256.h"
#include "pdf/font_subset.h"
#include "pdf/to_unicode.h"

namespace benchleaf::pdf {

namespace {

constexpr std::int64_t kMillion = 1'000'000;
constexpr std::size_t kTagLetters = 6;

/// `ABCDEF+Name`: the letters say that the font is a subset, and which one.
std::string subset_name(const page::FontMetrics& metrics, std::string_view program) {
  std::string name;
  for (char digit : base::sha256(program).substr(0, kTagLetters)) {
    name += static_cast<char>(digit <= '9' ? 'A' + (digit - '0') : 'A' + 10 + (digit - 'a'));
  }
  return name + '+' + metrics.postscript_name;
}

/// Font units as thousandths of a thousandth of the type size, rounded half away from zero.
std::int64_t scaled(std::int64_t units, const page::FontMetrics& metrics) {
  const std::int64_t per_em = metrics.units_per_em;
  const std::int64_t twice = 2 * units * kMillion;
  return (twice + (units < 0 ? -per_em : per_em)) / (2 * per_em);
}

/// Every glyph number up to the last is a glyph of the program, so every bit is set; the last byte is filled up with zeros.
std::string character_set(std::size_t glyphs) {
  std::string bits(glyphs / 8, '\xFF');
  if (glyphs % 8 != 0) bits += static_cast<char>(0xFF << (8 - glyphs % 8) & 0xFF);
  return bits;
}

/// 9.8.2 of ISO 32000-1: 1 fixed pitch, 4 symbolic (the codes are no standard encoding), 64 italic.
int flags_of(const page::FontMetrics& metrics) {
  return 4 | (metrics.fixed_pitch ? 1 : 0) | (metrics.italic_angle != 0 ? 64 : 0);
}

/// No table of a TrueType font states the width of a stem; this parabola through the weights is common practice.
std::int64_t stem_width(int weight) { return 50'000 + static_cast<std::int64_t>(weight) * weight * 1000 / (65 * 65); }

void append_entry(std::string& out, std::string_view key, std::int64_t thousandths) {
  out += key;
  append_thousandths(out, thousandths);
}

std::string descriptor(const page::FontMetrics& metrics, const std::string& name, ObjectNumber program, ObjectNumber set) {
  std::string out = "/Type /FontDescriptor /FontName ";
  append_name(out, name);
  out += " /Flags ";
  append_integer(out, flags_of(metrics));
  out += " /FontBBox [";
  for (int edge : metrics.box) append_entry(out, " ", scaled(edge, metrics));
  append_entry(out, "] /ItalicAngle ", std::llround(metrics.italic_angle * 1000));
  append_entry(out, " /Ascent ", scaled(metrics.ascent, metrics));
  append_entry(out, " /Descent ", scaled(metrics.descent, metrics));
  append_entry(out, " /CapHeight ", scaled(metrics.cap_height, metrics));
  append_entry(out, " /XHeight ", scaled(metrics.x_height, metrics));
  append_entry(out, " /StemV ", stem_width(metrics.weight));
  out += " /FontFile2 ";
  append_reference(out, program);
  out += " /CIDSet ";
  append_reference(out, set);
  return out;
}

/// Widths in runs of at most a thousand: an array has a limit of 8,191.
std::string widths(const FontCodes& codes, const std::vector<std::uint32_t>& old_glyphs) {
  constexpr std::size_t kRun = 1000;
  std::string out = "[";
  for (std::size_t i = 0; i < old_glyphs.size(); ++i) {
    if (i % kRun == 0) {
      if (i > 0) out += "] ";
      append_integer(out, static_cast<std::int64_t>(i));
      out += " [";
    }
    append_entry(out, i % kRun == 0 ? "" : " ", codes.width.at(old_glyphs.at(i)));
  }
  return out + "]]";
}

std::string descendant(const std::string& name, ObjectNumber descriptor_number, const std::string& width_array) {
  std::string out = "/Type /Font /Subtype /CIDFontType2 /BaseFont ";
  append_name(out, name);
  out += " /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >> /CIDToGIDMap /Identity /FontDescriptor ";
  append_reference(out, descriptor_number);
  return out + " /W " + width_array;
}

std::string type0(const std::string& name, ObjectNumber descendant_number, ObjectNumber to_unicode) {
  std::string out = "/Type /Font /Subtype /Type0 /BaseFont ";
  append_name(out, name);
  out += " /Encoding /Identity-H /DescendantFonts [";
  append_reference(out, descendant_number);
  out += "] /ToUnicode ";
  append_reference(out, to_unicode);
  return out;
}

/// Glyphs that the font does not have keep code 0 and show the box for missing characters.
FontCodes number_glyphs(const page::FontSet& fonts, page::FontIndex font, std::uint32_t last_used, const FontSubset& subset) {
  FontCodes codes;
  const std::uint32_t last = std::max(last_used, *std::max_element(subset.old_glyphs.begin(), subset.old_glyphs.end()));
  codes.code.resize(last + 1, 0);
  codes.width.resize(last + 1, scaled(fonts.advance(font, 0), fonts.metrics(font)));
  for (std::size_t i = 0; i < subset.old_glyphs.size(); ++i) {
    const std::uint32_t old = subset.old_glyphs.at(i);
    codes.code.at(old) = static_cast<std::uint32_t>(i);
    codes.width.at(old) = scaled(fonts.advance(font, old), fonts.metrics(font));
  }
  return codes;
}

FontCodes embed_font(const page::FontSet& fonts, page::FontIndex font, const FontTexts& texts, HaruFile& file) {
  const std::vector<std::uint32_t> used = texts.used();
  const FontSubset subset = subset_font(fonts.bytes(font), used);
  if (subset.bytes.empty() || subset.old_glyphs.empty()) return {};
  FontCodes codes = number_glyphs(fonts, font, used.back(), subset);
  const page::FontMetrics& metrics = fonts.metrics(font);
  const std::string name = subset_name(metrics, subset.bytes);
  const std::string length = "/Length1 " + std::to_string(subset.bytes.size());
  const ObjectNumber program = file.add_stream(length, subset.bytes, HaruFile::Packing::flate);
  const ObjectNumber set = file.add_stream({}, character_set(subset.old_glyphs.size()), HaruFile::Packing::flate);
  const ObjectNumber described = file.add_dictionary(descriptor(metrics, name, program, set));
  const ObjectNumber inner = file.add_dictionary(descendant(name, described, widths(codes, subset.old_glyphs)));
  const ObjectNumber map = file.add_stream({}, to_unicode(texts_by_code(texts, subset.old_glyphs), 2), HaruFile::Packing::flate);
  codes.object = file.add_dictionary(type0(name, inner, map));
  return codes;
}

}  // namespace

std::vector<FontCodes> embed_fonts(const page::FontSet& fonts, const std::vector<FontTexts>& texts, HaruFile& file,
                                   report::Findings& findings) {
  std::vector<FontCodes> all(texts.size());
  for (std::size_t i = 0; i < texts.size(); ++i) {
    if (texts.at(i).used().empty()) continue;
    const page::FontIndex font = static_cast<page::FontIndex>(i);
    all.at(i) = embed_font(fonts, font, texts.at(i), file);
    if (all.at(i).object != 0) continue;
    findings.add(report::Rule::pdf_font, {}, "the font " + fonts.metrics(font).postscript_name + " cannot be embedded",
                 "name a TrueType font file in schema/fonts.yaml");
  }
  return all;
}

std::string font_name(page::FontIndex font) { return "F" + std::to_string(font); }

}  // namespace benchleaf::pdf
