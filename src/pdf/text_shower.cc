// In: the glyphs of text items with the advances HarfBuzz gave them. Out: `[(..)-20(..)]TJ`. A reader of the file moves by
// the widths in the font; what kerning and justified spaces want otherwise goes between the strings. Corrections are measured
// from where the reader is, so that rounding never adds up.
#include "pdf/text_shower.h"

#include <array>
#include <cstdlib>

#include "pdf/sign_font.h"
#include "pdf/syntax.h"

namespace benchleaf::pdf {

namespace {

constexpr std::int64_t kMillion = 1'000'000;  // lengths of the display list in one unit of the pen

/// By quarter turns clockwise: the first four numbers of the text matrix.
constexpr std::array<std::string_view, 4> kTurns = {"1 0 0 1 ", "0 -1 1 0 ", "-1 0 0 -1 ", "0 1 -1 0 "};

/// Corrections are multiples of so many 1/1,000,000 of the type size. Half a step is the largest error left: 0.005 pt at 10 pt
/// and 0.003 pt in larger type.
std::int64_t correction_step(page::Length size) {
  if (size <= 10 * page::kPt) return 1000;
  return size <= 60 * page::kPt ? 100 : 10;
}

constexpr page::FontIndex kSignFont = -2;  // no font has it

/// A gap wider than this is a new start: readers take it for another column.
constexpr std::int64_t kWidestGap = 2;  // type sizes

}  // namespace

TextShower::TextShower(const FontBook& book, page::Length page_height, std::string& out)
    : book_(book), page_height_(page_height), out_(out) {}

void TextShower::begin() {
  if (open_) return;
  open_ = true;
  upright_ = true;
  line_ = {0, 0};
  pen_ = -1;  // no item goes on from here
  out_ += "BT\n";
}

void TextShower::end() {
  if (!open_) return;
  pause();
  out_ += "ET\n";
  open_ = false;
}

void TextShower::show(const page::TextItem& item) {
  item_ = &item;
  units_per_em_ = book_.fonts.metrics(item.font).units_per_em;
  units_ = 0;
  extra_ = 0;
  set_font(item.font, item.size);
  go_to(item.at, item.quarter_turns);
  for (std::size_t first = 0; first < item.glyphs.size();) {
    const Cluster cluster = cluster_at(item, first);
    show_cluster(cluster);
    first = cluster.last;
  }
  set_rise(0);
}

void TextShower::show(const page::SignItem& sign) {
  set_font(kSignFont, sign.size);
  go_to(sign.at, 0);
  move_to(start_);
  open_array();
  out_ += '(';
  append_byte(out_, static_cast<char>(sign_code(sign)));
  in_string_ = true;
  pen_ += sign.size * kMillion;
}

void TextShower::set_font(page::FontIndex font, page::Length size) {
  if (font == font_ && size == size_) return;
  pause();
  font_ = font;
  size_ = size;
  append_name(out_, font == kSignFont ? kSignFontName : font_name(font_));
  out_ += ' ';
  append_thousandths(out_, size_);
  out_ += " Tf\n";
}

bool TextShower::goes_on(page::Point at, int quarter_turns) const {
  if (!upright_ || pen_ < 0 || quarter_turns != 0) return false;
  if (rounded_quotient(page_height_ - at.y, 10) != line_.y) return false;
  const std::int64_t gap = at.x * kMillion - pen_;
  return gap > -size_ * kMillion / 4 && gap < size_ * kMillion * kWidestGap;
}

void TextShower::go_to(page::Point at, int quarter_turns) {
  start_ = quarter_turns == 0 ? at.x * kMillion : 0;
  if (goes_on(at, quarter_turns)) return;
  pause();
  const page::Point to{rounded_quotient(at.x, 10), rounded_quotient(page_height_ - at.y, 10)};
  const bool moves = upright_ && quarter_turns == 0;
  if (!moves) out_ += kTurns.at(static_cast<std::size_t>(quarter_turns & 3));
  append_hundredths(out_, 10 * (moves ? to.x - line_.x : to.x));
  out_ += ' ';
  append_hundredths(out_, 10 * (moves ? to.y - line_.y : to.y));
  out_ += moves ? " Td\n" : " Tm\n";
  upright_ = quarter_turns == 0;
  line_ = to;
  pen_ = upright_ ? to.x * 10 * kMillion : 0;
}

/// Where the font's own map would give another text than the one meant, the text is said beside the glyphs.
void TextShower::show_cluster(const Cluster& cluster) {
  const FontTexts& texts = book_.texts.at(static_cast<std::size_t>(item_->font));
  const bool alone = cluster.last - cluster.first == 1;
  const bool mapped = alone && texts.text_of(item_->glyphs.at(cluster.first).id) == cluster.text;
  const bool spoken = !cluster.text.empty() && !mapped;
  if (spoken) {
    pause();
    out_ += "/Span<</ActualText";
    append_text(out_, cluster.text);
    out_ += ">>BDC\n";
  }
  for (std::size_t i = cluster.first; i < cluster.last; ++i) show_glyph(item_->glyphs.at(i));
  if (spoken) {
    pause();
    out_ += "EMC\n";
  }
}

void TextShower::show_glyph(const page::Glyph& glyph) {
  const FontCodes& codes = book_.codes.at(static_cast<std::size_t>(item_->font));
  set_rise(rounded_quotient(glyph.dy * size_, units_per_em_));
  move_to(start_ + rounded_quotient((units_ + glyph.dx) * size_ * kMillion, units_per_em_) + extra_ * kMillion);
  open_array();
  if (!in_string_) out_ += '(';
  in_string_ = true;
  append_code(out_, codes.code.at(glyph.id));
  pen_ += codes.width.at(glyph.id) * size_;
  units_ += glyph.advance;
  extra_ += glyph.extra;
}

void TextShower::move_to(std::int64_t wanted) {
  const std::int64_t step = correction_step(size_);
  const std::int64_t steps = rounded_quotient(wanted - pen_, step * size_);
  if (steps == 0) return;
  open_array();
  close_string();
  append_thousandths(out_, -steps * step);
  pen_ += steps * step * size_;
}

void TextShower::set_rise(std::int64_t rise) {
  if (rise == rise_) return;
  pause();
  append_thousandths(out_, rise);
  out_ += " Ts\n";
  rise_ = rise;
}

void TextShower::open_array() {
  if (in_array_) return;
  out_ += '[';
  in_array_ = true;
}

void TextShower::pause() {
  if (!in_array_) return;
  close_string();
  out_ += "]TJ\n";
  in_array_ = false;
}

void TextShower::close_string() {
  if (in_string_) out_ += ')';
  in_string_ = false;
}

}  // namespace benchleaf::pdf
