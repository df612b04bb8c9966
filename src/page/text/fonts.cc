// In: the bytes of the font files. Out: open fonts with their measures, and findings on files that cannot be used.
#include "page/text/fonts.h"

#include <hb-ot.h>

#include <algorithm>
#include <cstddef>
#include <utility>

#include "page/text/font_data.h"
#include "page/text/style.h"

namespace benchleaf::page {

namespace {

constexpr std::array<std::string_view, kFaceCount> kFaceNames = {
    "text",           "text-italic", "text-bold", "text-bold-italic", "condensed", "condensed-italic",
    "condensed-bold", "mono",        "symbol",    "symbol-bold"};

std::size_t place(Face face) { return static_cast<std::size_t>(face); }

/// A table of a font: big-endian numbers, 0 past its end.
class Table {
 public:
  Table(hb_face_t* face, hb_tag_t tag) : blob_(hb_face_reference_table(face, tag)) {
    data_ = hb_blob_get_data(blob_.get(), &length_);
  }
  unsigned length() const { return length_; }
  int u16(unsigned at) const { return at + 2 <= length_ ? (byte(at) << 8 | byte(at + 1)) : 0; }
  int i16(unsigned at) const {
    const int value = u16(at);
    return value >= 0x8000 ? value - 0x10000 : value;
  }

 private:
  int byte(unsigned at) const { return static_cast<unsigned char>(data_[at]); }
  HarfBuzz<hb_blob_t> blob_;
  const char* data_ = nullptr;
  unsigned length_ = 0;
};

/// Height of a drawn letter, for fonts whose OS/2 table is too old to state it.
int drawn_height(const OpenFont& open, char32_t letter, int otherwise) {
  hb_codepoint_t glyph = 0;
  hb_glyph_extents_t extents{};
  if (hb_font_get_nominal_glyph(open.font.get(), letter, &glyph) == 0 ||
      hb_font_get_glyph_extents(open.font.get(), glyph, &extents) == 0) {
    return otherwise;
  }
  return extents.y_bearing;
}

std::string postscript_name(hb_face_t* face) {
  char name[128] = {};
  unsigned size = sizeof name;
  hb_ot_name_get_utf8(face, HB_OT_NAME_ID_POSTSCRIPT_NAME, HB_LANGUAGE_INVALID, &size, name);
  std::string result(name, std::min<std::size_t>(size, sizeof name - 1));
  // a name in a PDF file is printable ASCII without the signs that end one
  std::erase_if(result,
                [](char c) { return c <= ' ' || c > '~' || std::string_view("[](){}<>/%").find(c) != std::string_view::npos; });
  return result;
}

FontMetrics read_metrics(const OpenFont& open) {
  hb_face_t* face = open.face.get();
  const Table head(face, HB_TAG('h', 'e', 'a', 'd'));
  const Table hhea(face, HB_TAG('h', 'h', 'e', 'a'));
  const Table os2(face, HB_TAG('O', 'S', '/', '2'));
  const Table post(face, HB_TAG('p', 'o', 's', 't'));
  FontMetrics metrics;
  metrics.units_per_em = static_cast<int>(hb_face_get_upem(face));
  metrics.ascent = hhea.i16(4);
  metrics.descent = hhea.i16(6);
  for (unsigned side = 0; side < 4; ++side) metrics.box[side] = head.i16(36 + 2 * side);
  metrics.italic_angle = post.i16(4) + post.u16(6) / 65536.0;
  metrics.fixed_pitch = (post.u16(12) | post.u16(14)) != 0;
  if (os2.length() >= 6) metrics.weight = os2.u16(4);
  const bool states_heights = os2.u16(0) >= 2 && os2.length() >= 90;
  metrics.x_height = states_heights ? os2.i16(86) : 0;
  metrics.cap_height = states_heights ? os2.i16(88) : 0;
  if (metrics.x_height <= 0) metrics.x_height = drawn_height(open, U'x', metrics.ascent / 2);
  if (metrics.cap_height <= 0) metrics.cap_height = drawn_height(open, U'H', metrics.ascent);
  metrics.postscript_name = postscript_name(face);
  return metrics;
}

/// What keeps the font from being used, or an empty text.
std::string fault_of(const OpenFont& open) {
  const std::string_view bytes = open.bytes;
  if (bytes.substr(0, 4) != std::string_view("\0\1\0\0", 4) && bytes.substr(0, 4) != "true") {
    return "it does not begin as a TrueType file";
  }
  for (const char* name : {"head", "hhea", "hmtx", "maxp", "cmap", "glyf", "loca", "name"}) {
    const hb_tag_t tag = hb_tag_from_string(name, 4);
    if (Table(open.face.get(), tag).length() == 0) return "its table " + std::string(name) + " is missing or broken";
  }
  if (hb_face_get_glyph_count(open.face.get()) == 0) return "it has no glyphs";
  if (Table(open.face.get(), HB_TAG('h', 'e', 'a', 'd')).u16(18) < 16) return "its units per em are out of range";
  return {};
}

bool has_even_figures(const OpenFont& open) {
  hb_position_t first = 0;
  for (char32_t figure = U'0'; figure <= U'9'; ++figure) {
    hb_codepoint_t glyph = 0;
    if (hb_font_get_nominal_glyph(open.font.get(), figure, &glyph) == 0) return false;
    const hb_position_t advance = hb_font_get_glyph_h_advance(open.font.get(), glyph);
    if (figure == U'0') first = advance;
    if (advance != first) return false;
  }
  return true;
}

std::unique_ptr<OpenFont> open_font(std::string bytes) {
  auto open = std::make_unique<OpenFont>();
  open->bytes = std::move(bytes);
  const HarfBuzz<hb_blob_t> blob(
      hb_blob_create(open->bytes.data(), static_cast<unsigned>(open->bytes.size()), HB_MEMORY_MODE_READONLY, nullptr, nullptr));
  open->face.reset(hb_face_create(blob.get(), 0));
  open->font.reset(hb_font_create(open->face.get()));
  return open;
}

bool may_be_embedded(const OpenFont& open) {
  // OpenType, OS/2, fsType: of bits 0 to 3 the value 2 alone is "restricted licence embedding"
  return (Table(open.face.get(), HB_TAG('O', 'S', '/', '2')).u16(8) & 0xF) != 2;
}

}  // namespace

std::string_view face_name(Face face) { return kFaceNames.at(place(face)); }

std::optional<Face> face_named(std::string_view role) {
  const auto found = std::find(kFaceNames.begin(), kFaceNames.end(), role);
  if (found == kFaceNames.end()) return std::nullopt;
  return static_cast<Face>(found - kFaceNames.begin());
}

FontSet FontSet::open(std::vector<FontFile> files, report::Findings& findings) {
  auto impl = std::make_unique<Impl>();
  impl->index.fill(-1);
  for (FontFile& file : files) {
    FontIndex& index = impl->index.at(place(file.face));
    const std::string who = "the font " + file.file + " for the role " + std::string(face_name(file.face));
    auto open = open_font(std::move(file.bytes));
    std::string fault = fault_of(*open);
    if (fault.empty() && index >= 0) fault = "the role has a font already";
    if (!fault.empty()) {
      findings.add(report::Rule::font_unusable, {}, who + " cannot be used: " + fault,
                   "install the package that schema/fonts.yaml names");
      continue;
    }
    if (!may_be_embedded(*open)) {
      findings.add(report::Rule::font_embedding, {}, who + " may not be embedded: its fsType says restricted licence",
                   "choose a font that may be embedded");
      continue;
    }
    open->metrics = read_metrics(*open);
    open->even_figures = has_even_figures(*open);
    index = static_cast<FontIndex>(impl->fonts.size());
    impl->fonts.push_back(std::move(open));
  }
  impl->complete = true;
  for (int face = 0; face < kFaceCount; ++face) {
    if (impl->index.at(static_cast<std::size_t>(face)) >= 0) continue;
    impl->complete = false;
    findings.add(report::Rule::font_missing, {}, "no usable font for the role " + std::string(face_name(static_cast<Face>(face))),
                 "name its file in schema/fonts.yaml");
  }
  return FontSet(std::move(impl));
}

FontSet::FontSet(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
FontSet::FontSet(FontSet&&) noexcept = default;
FontSet& FontSet::operator=(FontSet&&) noexcept = default;
FontSet::~FontSet() = default;

bool FontSet::complete() const { return impl_->complete; }
int FontSet::size() const { return static_cast<int>(impl_->fonts.size()); }
FontIndex FontSet::index(Face face) const { return impl_->index.at(place(face)); }
const FontMetrics& FontSet::metrics(FontIndex font) const { return impl_->fonts.at(static_cast<std::size_t>(font))->metrics; }
const std::string& FontSet::bytes(FontIndex font) const { return impl_->fonts.at(static_cast<std::size_t>(font))->bytes; }

std::int32_t FontSet::advance(FontIndex font, std::uint32_t glyph) const {
  return hb_font_get_glyph_h_advance(impl_->fonts.at(static_cast<std::size_t>(font))->font.get(), glyph);
}

std::uint32_t FontSet::glyph(FontIndex font, char32_t code) const {
  hb_codepoint_t glyph = 0;
  hb_font_get_nominal_glyph(impl_->fonts.at(static_cast<std::size_t>(font))->font.get(), code, &glyph);
  return glyph;
}

Length from_units(std::int64_t units, Length size, int units_per_em) {
  const std::int64_t twice = 2 * units * size + units_per_em;
  const std::int64_t divisor = 2 * static_cast<std::int64_t>(units_per_em);
  return twice >= 0 ? twice / divisor : -((-twice + divisor - 1) / divisor);
}

Length cap_height(const FontSet& fonts, const TextStyle& style) {
  const FontMetrics& metrics = fonts.metrics(fonts.index(style.face));
  return from_units(metrics.cap_height, style.size, metrics.units_per_em);
}

Length baseline_in_line(const FontSet& fonts, const TextStyle& style) {
  const FontMetrics& metrics = fonts.metrics(fonts.index(style.face));
  const Length above = from_units(metrics.ascent, style.size, metrics.units_per_em);
  const Length below = from_units(-metrics.descent, style.size, metrics.units_per_em);
  return above + (style.leading - above - below) / 2;
}

}  // namespace benchleaf::page
