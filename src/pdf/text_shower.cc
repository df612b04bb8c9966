// In: the glyphs of a text item with the advances HarfBuzz gave them. Out: `[<0012> -20 <0034>] TJ`. A reader of the file
// moves by the widths in the font; what kerning and justified spaces want otherwise goes between the strings. Corrections
// are measured from the start of the item, so that rounding never adds up.
#include "pdf/text_shower.h"

#include <cstdlib>

namespace benchleaf::pdf {

namespace {

constexpr std::int64_t kMillion = 1'000'000;
constexpr page::Length kLargeType = 60 * page::kPt;

/// Half a step is the largest error left: 0.00005 em is 0.003 pt at 60 pt.
std::int64_t correction_step(page::Length size) { return size <= kLargeType ? 100 : 10; }

std::int64_t rounded_quotient(std::int64_t value, std::int64_t divisor) {
  const std::int64_t half = divisor / 2;
  return value < 0 ? -((-value + half) / divisor) : (value + half) / divisor;
}

}  // namespace

TextShower::TextShower(const page::TextItem& item, const FontCodes& codes, const FontTexts& texts, int units_per_em,
                       std::string& out)
    : item_(item), codes_(codes), texts_(texts), units_per_em_(units_per_em), step_(correction_step(item.size)), out_(out) {}

void TextShower::show() {
  for (std::size_t first = 0; first < item_.glyphs.size();) {
    const Cluster cluster = cluster_at(item_, first);
    show_cluster(cluster);
    first = cluster.last;
  }
  close_array();
  set_rise(0);
}

/// Where the font's own map would give another text than the one meant, the text is said beside the glyphs.
void TextShower::show_cluster(const Cluster& cluster) {
  const bool alone = cluster.last - cluster.first == 1;
  const bool mapped = alone && texts_.text_of(item_.glyphs.at(cluster.first).id) == cluster.text;
  const bool spoken = !cluster.text.empty() && !mapped;
  if (spoken) {
    close_array();
    out_ += "/Span <</ActualText <FEFF";
    append_utf16(out_, cluster.text);
    out_ += ">>> BDC\n";
  }
  for (std::size_t i = cluster.first; i < cluster.last; ++i) show_glyph(item_.glyphs.at(i));
  if (spoken) {
    close_array();
    out_ += "EMC\n";
  }
}

void TextShower::show_glyph(const page::Glyph& glyph) {
  const std::int64_t size = item_.size;
  set_rise(rounded_quotient(glyph.dy * size, units_per_em_));
  move_to(rounded_quotient((units_ + glyph.dx) * kMillion, units_per_em_) + rounded_quotient(extra_ * kMillion, size));
  open_array();
  if (!in_hex_) out_ += '<';
  in_hex_ = true;
  append_hex16(out_, codes_.code.at(glyph.id));
  pen_ += codes_.width.at(glyph.id);
  units_ += glyph.advance;
  extra_ += glyph.extra;
}

void TextShower::move_to(std::int64_t wanted) {
  const std::int64_t steps = rounded_quotient(wanted - pen_, step_);
  if (steps == 0) return;
  open_array();
  close_hex();
  append_thousandths(out_, -steps * step_);
  pen_ += steps * step_;
}

void TextShower::set_rise(std::int64_t rise) {
  if (rise == rise_) return;
  close_array();
  append_thousandths(out_, rise);
  out_ += " Ts\n";
  rise_ = rise;
}

void TextShower::open_array() {
  if (in_array_) return;
  out_ += '[';
  in_array_ = true;
}

void TextShower::close_array() {
  if (!in_array_) return;
  close_hex();
  out_ += "] TJ\n";
  in_array_ = false;
}

void TextShower::close_hex() {
  if (in_hex_) out_ += '>';
  in_hex_ = false;
}

}  // namespace benchleaf::pdf
