// In: pieces, or a line that is set. Out: measures for table columns: widths, single lines, decimal points.
#include <algorithm>
#include <utility>

#include "base/utf8.h"
#include "page/text/paragraph.h"
#include "page/text/paragraph_items.h"
#include "page/text/paragraph_lines.h"
#include "page/text/setter_state.h"

namespace benchleaf::page {

namespace {

constexpr std::string_view kThinSpace = "\xE2\x80\x89";

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

/// A line as one text, with the x of each byte.
struct Track {
  std::string text;
  std::vector<Length> x;  ///< one more than bytes: the last is the end
};

void follow(const FontSet& fonts, const PlacedPiece& placed, Track& track) {
  const TextItem* item = std::get_if<TextItem>(&placed.what);
  if (item == nullptr) {
    track.text += '\0';
    track.x.push_back(placed.x);
    return;
  }
  const int units_per_em = fonts.metrics(item->font).units_per_em;
  const std::size_t base = track.x.size();
  track.text += item->text;
  track.x.resize(track.text.size(), placed.x);
  std::int64_t units = 0;
  Length extra = 0;
  for (const Glyph& glyph : item->glyphs) {
    // bytes inside a cluster take the x of its beginning
    std::fill(track.x.begin() + static_cast<std::ptrdiff_t>(base + glyph.cluster), track.x.end(),
              placed.x + from_units(units, item->size, units_per_em) + extra);
    units += glyph.advance;
    extra += glyph.extra;
  }
}

/// Behind the whole part of the number that begins at `at`: figures in threes with thin spaces are one number.
std::size_t whole_part_end(std::string_view text, std::size_t at) {
  while (at < text.size()) {
    if (is_digit(text[at])) {
      ++at;
      continue;
    }
    const std::size_t group = at + kThinSpace.size();
    const bool grouped = text.substr(at, kThinSpace.size()) == kThinSpace && group + 3 <= text.size() && is_digit(text[group]) &&
                         is_digit(text[group + 1]) && is_digit(text[group + 2]);
    if (!grouped) break;
    at = group;
  }
  return at;
}

std::size_t number_end(std::string_view text, std::size_t whole) {
  if (whole + 1 >= text.size() || text[whole] != '.' || !is_digit(text[whole + 1])) return whole;
  std::size_t end = whole + 1;
  while (end < text.size() && is_digit(text[end])) ++end;
  return end;
}

}  // namespace

SetLine TextSetter::set_line(const std::vector<Piece>& pieces, std::vector<MissingGlyph>& missing) {
  const ParagraphText text = state_->read(pieces, false);
  LineComposer line(pieces, state_->shaper, missing);
  for (const Atom& atom : text.atoms) {
    const std::string_view part = std::string_view(text.text).substr(atom.begin, atom.end - atom.begin);
    switch (atom.kind) {
      case Atom::Kind::word: line.add_part(atom.piece, part, false); break;
      case Atom::Kind::space: line.add_space(atom.piece, part); break;
      case Atom::Kind::box: line.add_box(atom.piece); break;
      case Atom::Kind::line_end:
        if (&atom != &text.atoms.back()) line.add_space(atom.piece, " ");
        break;
    }
  }
  if (pieces.empty()) return {};
  SetLine result = line.finish(0, 0);
  int done = -1;
  for (PlacedPiece& placed : result.pieces) {
    if (placed.piece > done) placed.anchor = pieces[static_cast<std::size_t>(placed.piece)].anchor;
    done = std::max(done, placed.piece);
  }
  return result;
}

Length TextSetter::natural_width(const std::vector<Piece>& pieces) {
  const ParagraphItems items = make_items(state_->read(pieces, false), pieces, state_->shaper, {});
  Length widest = 0;
  Length width = 0;
  for (const BreakItem& item : items.items) {
    if (item.kind != BreakItem::Kind::penalty) {
      width += item.width;
    } else if (item.penalty <= kForcedBreak) {
      widest = std::max(widest, width);
      width = 0;
    }
  }
  return widest;
}

Length TextSetter::minimum_width(const std::vector<Piece>& pieces, bool hyphenate) {
  const ParagraphItems made = make_items(state_->read(pieces, hyphenate), pieces, state_->shaper, {});
  const std::vector<BreakItem>& items = made.items;
  Length widest = 0;
  Length width = 0;
  bool behind_box = false;
  for (std::size_t i = first_line_start(items); i < items.size();) {
    const BreakItem& item = items[i];
    const bool penalty = item.kind == BreakItem::Kind::penalty && item.penalty < kNoBreak;
    if (penalty || (item.kind == BreakItem::Kind::glue && behind_box)) {
      widest = std::max(widest, width + (penalty ? item.width : 0));
      width = penalty ? item.after : 0;
      behind_box = false;
      i = line_start(items, i);
      continue;
    }
    if (item.kind != BreakItem::Kind::penalty) width += item.width;
    behind_box = item.kind == BreakItem::Kind::box;
    ++i;
  }
  return widest;
}

std::vector<Length> decimal_points(const FontSet& fonts, const SetLine& line) {
  Track track;
  for (const PlacedPiece& placed : line.pieces) follow(fonts, placed, track);
  track.x.push_back(line.left + line.width);
  std::vector<Length> points;
  const std::string_view text = track.text;
  for (std::size_t at = 0; at < text.size();) {
    if (!is_digit(text[at])) {
      ++at;
      continue;
    }
    const std::size_t whole = whole_part_end(text, at);
    const std::size_t end = number_end(text, whole);
    const bool code = (at > 0 && is_letter(text[at - 1])) || (end < text.size() && is_letter(text[end]));
    if (!code) points.push_back(track.x[whole]);
    at = end;
  }
  return points;
}

}  // namespace benchleaf::page
