// In: what stands on one line. Out: the placed glyphs and boxes of that line.
#include "page/text/paragraph_lines.h"

#include <algorithm>
#include <string>
#include <utility>

namespace benchleaf::page {

namespace {

constexpr std::string_view kSoftHyphen = "\xC2\xAD";
constexpr char32_t kSoftHyphenCode = U'\u00AD';

Length glyphs_width(const TextItem& item, int units_per_em) {
  std::int64_t units = 0;
  Length extra = 0;
  for (const Glyph& glyph : item.glyphs) {
    units += glyph.advance;
    extra += glyph.extra;
  }
  return from_units(units, item.size, units_per_em) + extra;
}

}  // namespace

LineComposer::LineComposer(const std::vector<Piece>& pieces, Shaper& shaper, std::vector<MissingGlyph>& missing)
    : pieces_(pieces), shaper_(shaper), missing_(missing) {}

PlacedPiece& LineComposer::place(int index) {
  const Piece& from = piece(index);
  PlacedPiece placed;
  placed.x = pen_;
  placed.piece = index;
  placed.tag = from.tag;
  placed.link = from.link;
  line_.pieces.push_back(std::move(placed));
  return line_.pieces.back();
}

/// The last text if it is of the same piece and font, else a new one.
TextItem& LineComposer::item_for(int index, FontIndex font) {
  if (!line_.pieces.empty() && line_.pieces.back().piece == index) {
    TextItem* last = std::get_if<TextItem>(&line_.pieces.back().what);
    if (last != nullptr && last->font == font) return *last;
  }
  const TextStyle& style = piece(index).style;
  TextItem item;
  item.font = font;
  item.size = style.size;
  item.at = {pen_, -style.rise};
  item.color = style.color;
  PlacedPiece& placed = place(index);
  placed.what = std::move(item);
  return std::get<TextItem>(placed.what);
}

/// Appends glyphs; `last_text`, if any, is what the last byte of the text shall read as.
void LineComposer::append(int index, const ShapedText& shaped, std::string_view last_text) {
  const TextStyle& style = piece(index).style;
  for (const ShapedRun& run : shaped.runs) {
    TextItem& item = item_for(index, run.font);
    const std::size_t base = item.text.size();
    item.text += std::string_view(shaped.text).substr(run.begin, run.end - run.begin);
    for (Glyph glyph : run.glyphs) {
      glyph.cluster = static_cast<std::uint32_t>(glyph.cluster - run.begin + base);
      glyph.extra = style.tracking;
      item.glyphs.push_back(glyph);
    }
    if (!last_text.empty() && &run == &shaped.runs.back()) {
      item.text.replace(item.text.size() - 1, 1, last_text);
      // the font's own glyph for it, where there is one, so that a glyph has one text
      const std::uint32_t own = shaper_.fonts().glyph(run.font, kSoftHyphenCode);
      if (own != 0) item.glyphs.back().id = own;
    }
    PlacedPiece& placed = line_.pieces.back();
    placed.width = glyphs_width(item, shaper_.fonts().metrics(run.font).units_per_em);
    pen_ = placed.x + placed.width;
  }
  for (const char32_t code : shaped.missing) missing_.push_back({index, code, shaped.text});
}

void LineComposer::add_part(int index, std::string_view part, bool hyphen) {
  const TextStyle& style = piece(index).style;
  const std::string text = std::string(part) + (hyphen ? "-" : "");
  append(index, shaper_.shape(text, style.face, style.tabular), hyphen ? kSoftHyphen : std::string_view());
}

void LineComposer::add_space(int index, std::string_view space) {
  const TextStyle& style = piece(index).style;
  const Length before = pen_;
  append(index, shaper_.shape(space, style.face, style.tabular), {});
  const TextItem& item = std::get<TextItem>(line_.pieces.back().what);
  spaces_.push_back({line_.pieces.size() - 1, item.glyphs.size() - 1, pen_ - before});
}

void LineComposer::add_box(int index) {
  PlacedPiece& placed = place(index);
  const InlineBox& box = *piece(index).box;
  placed.what = box;
  placed.width = box.width;
  pen_ += box.width;
}

void LineComposer::stretch(Length slack) {
  Length total = 0;
  for (const Space& space : spaces_) total += space.width;
  if (total <= 0) return;
  slack = std::min(slack, kMostStretch * total);
  Length before = 0;
  Length given = 0;
  for (const Space& space : spaces_) {
    before += space.width;
    // shares by running sums: they differ by 1/1000 pt at most, and their sum is the slack
    const Length share = slack * before / total - given;
    given += share;
    TextItem& item = std::get<TextItem>(line_.pieces[space.part].what);
    item.glyphs[space.glyph].extra += share;
    line_.pieces[space.part].width += share;
  }
  measure();
}

/// Moves every piece behind the one before it.
void LineComposer::measure() {
  pen_ = 0;
  for (PlacedPiece& placed : line_.pieces) {
    placed.x = pen_;
    pen_ += placed.width;
  }
}

void LineComposer::add_space_at_end(int index) {
  const Length width = pen_;
  const std::size_t parts = line_.pieces.size();
  const Length last = parts > 0 ? line_.pieces.back().width : 0;
  const TextStyle& style = piece(index).style;
  append(index, shaper_.shape(" ", style.face, style.tabular), {});
  line_.pieces.back().width = line_.pieces.size() == parts ? last : 0;
  pen_ = width;
}

LineComposer::Extent LineComposer::extent(int empty_piece) const {
  const TextStyle* widest = nullptr;
  const TextStyle* beside = nullptr;  // of the words that a box stands for, so that boxes alone keep the words' baseline
  Extent boxes;
  for (const PlacedPiece& placed : line_.pieces) {
    const TextStyle& style = piece(placed.piece).style;
    if (const InlineBox* box = std::get_if<InlineBox>(&placed.what)) {
      boxes.above = std::max(boxes.above, box->height);
      boxes.below = std::max(boxes.below, box->depth);
      if (beside == nullptr) beside = &style;
    } else if (widest == nullptr || style.leading > widest->leading) {
      widest = &style;
    }
  }
  if (widest == nullptr) widest = line_.pieces.empty() ? &piece(empty_piece).style : beside;
  const Length above = baseline_in_line(shaper_.fonts(), *widest);
  return {std::max(above, boxes.above), std::max(widest->leading - above, boxes.below)};
}

SetLine LineComposer::finish(Length left, int empty_piece) {
  for (PlacedPiece& placed : line_.pieces) {
    placed.x += left;
    if (TextItem* item = std::get_if<TextItem>(&placed.what)) item->at.x = placed.x;
  }
  const Extent size = extent(empty_piece);
  line_.baseline = size.above;
  line_.height = size.above + size.below;
  line_.left = left;
  line_.width = pen_;
  return std::move(line_);
}

}  // namespace benchleaf::page
