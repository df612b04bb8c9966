// In: a text, a face. Out: its glyphs in font units, parted where another font has to help out.
//
// The setters shape words, not lines. What is lost is kerning with the space, which Roboto has for the letter T alone
// (0.02 em, bold 0.03 em); what is won is that a word of the book is shaped once.
#include "page/text/shape.h"

#include <hb-ot.h>

#include <array>
#include <cstdio>
#include <utility>

#include "base/utf8.h"
#include "page/text/font_data.h"
#include "page/text/text_hash.h"

namespace benchleaf::page {

namespace {

bool only_guides_breaking(char32_t code) {
  return code == U'\u00AD' || code == U'\u200B' || code == U'\u2060' || code == U'\uFEFF';
}

/// Format characters and variation selectors: HarfBuzz draws nothing for them, so no font has to have them.
bool is_invisible(char32_t code) {
  return hb_unicode_general_category(hb_unicode_funcs_get_default(), code) == HB_UNICODE_GENERAL_CATEGORY_FORMAT ||
         (code >= 0xFE00 && code <= 0xFE0F);
}

bool is_mark(char32_t code) {
  if (code < 0x300) return false;
  switch (hb_unicode_general_category(hb_unicode_funcs_get_default(), code)) {
    case HB_UNICODE_GENERAL_CATEGORY_SPACING_MARK:
    case HB_UNICODE_GENERAL_CATEGORY_ENCLOSING_MARK:
    case HB_UNICODE_GENERAL_CATEGORY_NON_SPACING_MARK: return true;
    default: return (code >= 0xFE00 && code <= 0xFE0F) || code == 0x200D;
  }
}

bool is_bold(Face face) {
  return face == Face::text_bold || face == Face::text_bold_italic || face == Face::condensed_bold || face == Face::symbol_bold;
}

/// The fonts to ask, in order.
std::array<FontIndex, 3> font_chain(const FontSet& fonts, Face face) {
  const Face first = is_bold(face) ? Face::symbol_bold : Face::symbol;
  const Face second = is_bold(face) ? Face::symbol : Face::symbol_bold;
  return {fonts.index(face), fonts.index(first), fonts.index(second)};
}

bool has(const FontSet& fonts, FontIndex font, char32_t code) { return is_invisible(code) || fonts.glyph(font, code) != 0; }

/// The first font that has all of a letter and its marks, else the first that has the letter, else the face itself.
FontIndex choose_font(const FontSet& fonts, const std::array<FontIndex, 3>& chain, std::u32string_view cluster) {
  for (const FontIndex font : chain) {
    bool all = true;
    for (const char32_t code : cluster) all = all && has(fonts, font, code);
    if (all) return font;
  }
  for (const FontIndex font : chain) {
    if (has(fonts, font, cluster.front())) return font;
  }
  return chain.front();
}

/// Fills `text`, the fonts and stretches of `runs`, and `missing`.
ShapedText part_by_font(const FontSet& fonts, std::string_view text, Face face) {
  ShapedText shaped;
  std::u32string codes;
  for (const char32_t code : base::code_points(text)) {
    if (!only_guides_breaking(code)) codes += code;
  }
  const std::array<FontIndex, 3> chain = font_chain(fonts, face);
  for (std::size_t at = 0; at < codes.size();) {
    std::size_t next = at + 1;
    while (next < codes.size() && is_mark(codes[next])) ++next;
    const std::u32string_view cluster = std::u32string_view(codes).substr(at, next - at);
    const FontIndex font = choose_font(fonts, chain, cluster);
    for (const char32_t code : cluster) {
      if (!has(fonts, font, code)) shaped.missing.push_back(code);
    }
    if (shaped.runs.empty() || shaped.runs.back().font != font) {
      shaped.runs.push_back({font, shaped.text.size(), 0, 0, {}});
    }
    shaped.text += base::to_utf8(cluster);
    shaped.runs.back().end = shaped.text.size();
    at = next;
  }
  return shaped;
}

void shape_run(const OpenFont& font, hb_buffer_t* buffer, std::string_view text, bool tabular, ShapedRun& run) {
  hb_buffer_clear_contents(buffer);
  // One direction and script for all: the book is English, and a foreign word must not turn a line about
  hb_buffer_set_direction(buffer, HB_DIRECTION_LTR);
  hb_buffer_set_script(buffer, HB_SCRIPT_LATIN);
  hb_buffer_set_language(buffer, hb_language_from_string("en", 2));
  hb_buffer_add_utf8(buffer, text.data(), static_cast<int>(text.size()), static_cast<unsigned>(run.begin),
                     static_cast<int>(run.end - run.begin));
  // Roboto's italics have even figures, but their `tnum` makes 6 and 8 wider: it is for fonts that need it
  const std::array<hb_feature_t, 2> features = {
      hb_feature_t{HB_TAG('t', 'n', 'u', 'm'), tabular && !font.even_figures ? 1U : 0U, HB_FEATURE_GLOBAL_START,
                   HB_FEATURE_GLOBAL_END},
      hb_feature_t{HB_TAG('p', 'n', 'u', 'm'), tabular ? 0U : 1U, HB_FEATURE_GLOBAL_START, HB_FEATURE_GLOBAL_END}};
  hb_shape(font.font.get(), buffer, features.data(), static_cast<unsigned>(features.size()));
  unsigned count = 0;
  const hb_glyph_info_t* infos = hb_buffer_get_glyph_infos(buffer, &count);
  const hb_glyph_position_t* positions = hb_buffer_get_glyph_positions(buffer, &count);
  run.glyphs.reserve(count);
  for (unsigned i = 0; i < count; ++i) {
    run.glyphs.push_back(
        {infos[i].codepoint, positions[i].x_advance, positions[i].x_offset, positions[i].y_offset, 0, infos[i].cluster});
    run.advance += positions[i].x_advance;
  }
}

std::string quoted_code(char32_t code) {
  char words[16] = {};
  std::snprintf(words, sizeof words, "U+%04X", static_cast<unsigned>(code));
  return words;
}

}  // namespace

struct Shaper::Cache {
  std::size_t count = 0;
  std::array<std::array<ByText<ShapedText>, 2>, kFaceCount> shapes;
  HarfBuzz<hb_buffer_t> buffer{hb_buffer_create()};
};

Shaper::Shaper(const FontSet& fonts) : fonts_(fonts), cache_(std::make_unique<Cache>()) {}
Shaper::~Shaper() = default;

const ShapedText& Shaper::shape(std::string_view text, Face face, bool tabular) {
  ByText<ShapedText>& shapes = cache_->shapes.at(static_cast<std::size_t>(face)).at(tabular ? 1 : 0);
  const auto known = shapes.find(text);
  if (known != shapes.end()) return known->second;
  ShapedText shaped = part_by_font(fonts_, text, face);
  for (ShapedRun& run : shaped.runs) {
    const OpenFont& font = *fonts_.impl().fonts.at(static_cast<std::size_t>(run.font));
    shape_run(font, cache_->buffer.get(), shaped.text, tabular, run);
  }
  ++cache_->count;
  return shapes.emplace(std::string(text), std::move(shaped)).first->second;
}

std::size_t Shaper::kept() const { return cache_->count; }

void Shaper::forget() {
  for (auto& by_figures : cache_->shapes) {
    for (ByText<ShapedText>& shapes : by_figures) shapes.clear();
  }
  cache_->count = 0;
}

Length Shaper::width(const ShapedText& shaped, const TextStyle& style) const {
  Length width = 0;
  for (const ShapedRun& run : shaped.runs) {
    width += from_units(run.advance, style.size, fonts_.metrics(run.font).units_per_em);
    width += style.tracking * static_cast<Length>(run.glyphs.size());
  }
  return width;
}

Length Shaper::width_before(const ShapedText& shaped, std::size_t bytes, const TextStyle& style) const {
  Length width = 0;
  for (const ShapedRun& run : shaped.runs) {
    std::int64_t units = 0;
    for (const Glyph& glyph : run.glyphs) {
      if (glyph.cluster >= bytes) break;
      units += glyph.advance;
      width += style.tracking;
    }
    width += from_units(units, style.size, fonts_.metrics(run.font).units_per_em);
  }
  return width;
}

Length Shaper::width(std::string_view text, const TextStyle& style) {
  return width(shape(text, style.face, style.tabular), style);
}

void report_missing(const std::vector<MissingGlyph>& missing, base::Span where, report::Findings& findings) {
  for (const MissingGlyph& glyph : missing) {
    findings.add(report::Rule::font_missing_glyph, where, "no font has " + quoted_code(glyph.code) + " in `" + glyph.text + "`",
                 "write it in words or with another sign");
  }
}

}  // namespace benchleaf::page
