// In: pieces of a paragraph. Out: its lines, broken for the least total demerits and placed.
#include "page/text/paragraph.h"

#include <algorithm>
#include <utility>

#include "page/text/paragraph_items.h"
#include "page/text/paragraph_lines.h"
#include "page/text/setter_state.h"

namespace benchleaf::page {

namespace {

constexpr int kJustifiedHyphen = 50;   ///< the 1981 paper's penalty for justified setting
constexpr int kRaggedHyphen = 500;     ///< and for ragged
constexpr double kFirstTolerance = 1;  ///< justified, without hyphens; only what fails it is tried with them
constexpr Length kShortLastEms = 4;    ///< a last line below this is to be avoided

/// A paragraph as far as it is read, with its breaks.
struct Broken {
  ParagraphText text;
  ParagraphItems items;
  Breaks breaks;
};

LineSlot slot_of(const ParagraphOptions& options, std::size_t line) {
  return line < options.first_lines.size() ? options.first_lines[line] : LineSlot{options.width, 0};
}

BreakOptions break_options(const ParagraphOptions& options, Length size) {
  BreakOptions result;
  result.width = options.width;
  for (const LineSlot& slot : options.first_lines) result.first_widths.push_back(slot.width);
  result.tolerance = std::min(kFirstTolerance, options.tolerance);
  result.short_last = kShortLastEms * size;
  if (options.align != Align::justify) {
    result.tolerance = options.tolerance;
    // a fifth of the measure: narrow columns are not to look ragged beyond need
    result.end_stretch = std::clamp(options.width / 5, size * 3 / 2, size * 3);
    // a tight line beside a loose one: nobody sees it where the ends are ragged
    result.fitness_demerits = 0;
  }
  return result;
}

/// First without the dictionary, then with it, then at any stretch: the last never fails.
Broken break_paragraph(TextSetter::State& state, const std::vector<Piece>& pieces, const ParagraphOptions& options) {
  Broken broken;
  broken.text = state.read(pieces, false);
  if (broken.text.atoms.empty()) return broken;
  const bool justify = options.align == Align::justify;
  const ItemOptions item_options{justify, justify ? kJustifiedHyphen : kRaggedHyphen};
  broken.items = make_items(broken.text, pieces, state.shaper, item_options);
  const Length size = pieces[static_cast<std::size_t>(broken.text.atoms.front().piece)].style.size;
  BreakOptions how = break_options(options, size);
  std::optional<Breaks> breaks = break_lines(broken.items.items, how);
  if (!breaks && state.can_hyphenate(options.hyphenate)) {
    broken.text = state.read(pieces, true);
    broken.items = make_items(broken.text, pieces, state.shaper, item_options);
  }
  if (!breaks) {
    how.tolerance = options.tolerance;
    breaks = break_lines(broken.items.items, how);
  }
  if (!breaks) {
    how.emergency = true;
    // a line without a space has something to stretch, so that lines can be told apart
    how.end_stretch = std::max(how.end_stretch, size / 2);
    breaks = break_lines(broken.items.items, how);
  }
  if (breaks) broken.breaks = std::move(*breaks);
  return broken;
}

/// Puts the items between two breaks on a line: those of one atom together.
void compose(LineComposer& line, const Broken& broken, std::size_t begin, std::size_t end) {
  const std::vector<ItemSource>& sources = broken.items.sources;
  for (std::size_t i = begin; i < end;) {
    const std::size_t index = sources[i].atom;
    const Atom& atom = broken.text.atoms[index];
    const bool continues = i == begin && begin > 0 && sources[begin - 1].atom == index;
    while (i < end && sources[i].atom == index) ++i;
    const bool cut = i == end && sources[end].atom == index && sources[end].at > 0;
    const bool hyphen = cut && sources[end].hyphen;
    const std::size_t from = continues ? std::max(atom.begin, sources[begin - 1].at) : atom.begin;
    const std::size_t to = cut ? sources[end].at : atom.end;
    const std::string_view text = std::string_view(broken.text.text).substr(from, to - from);
    switch (atom.kind) {
      case Atom::Kind::word:
        if (from == atom.begin && to == atom.end && !hyphen) {
          line.add_word(atom.piece, *broken.items.shapes[index]);
        } else {
          line.add_part(atom.piece, text, hyphen);
        }
        break;
      case Atom::Kind::space: line.add_space(atom.piece, text); break;
      case Atom::Kind::box: line.add_box(atom.piece); break;
      case Atom::Kind::line_end: break;
    }
  }
}

Length shift_of(Align align, Length slack) {
  if (slack <= 0) return 0;
  if (align == Align::right) return slack;
  return align == Align::centre ? slack / 2 : 0;
}

/// Sets the line that ends at `broken_line.end`.
SetLine set_one(LineComposer& line, const Broken& broken, std::size_t begin, const BrokenLine& broken_line, const LineSlot& slot,
                Align align) {
  const BreakItem& item = broken.items.items[broken_line.end];
  const Atom& at_end = broken.text.atoms[broken.items.sources[broken_line.end].atom];
  compose(line, broken, begin, broken_line.end);
  const bool last_of_all = broken_line.end + 1 == broken.items.items.size();
  const bool forced = item.kind == BreakItem::Kind::penalty && item.penalty <= kForcedBreak;
  const bool fits = broken_line.ratio >= -1;
  const Length slack = slot.width - line.width();
  if (align == Align::justify && fits && (slack < 0 || !forced)) line.stretch(slack);
  const Length width = line.width();
  if (!last_of_all && (item.kind == BreakItem::Kind::glue || (forced && width > 0))) line.add_space_at_end(at_end.piece);
  SetLine result = line.finish(slot.left + shift_of(align, slot.width - width), at_end.piece);
  if (!fits) result.too_wide = std::max<Length>(1, width - slot.width);
  return result;
}

/// Gives each piece's first part its anchor.
void hand_out_anchors(const std::vector<Piece>& pieces, SetParagraph& paragraph) {
  int done = -1;
  for (SetLine& line : paragraph.lines) {
    for (PlacedPiece& placed : line.pieces) {
      if (placed.piece <= done) continue;
      done = placed.piece;
      placed.anchor = pieces[static_cast<std::size_t>(done)].anchor;
    }
  }
}

}  // namespace

bool SetParagraph::too_wide() const {
  return std::any_of(lines.begin(), lines.end(), [](const SetLine& line) { return line.too_wide > 0; });
}

TextSetter::TextSetter(const FontSet& fonts, const Hyphenator* hyphenator)
    : state_(new State{fonts, hyphenator, Shaper(fonts), {}, {}}) {}
TextSetter::~TextSetter() = default;

Shaper& TextSetter::shaper() { return state_->shaper; }
const FontSet& TextSetter::fonts() const { return state_->fonts; }

SetParagraph TextSetter::set(const std::vector<Piece>& pieces, const ParagraphOptions& options) {
  SetParagraph result;
  const Broken broken = break_paragraph(*state_, pieces, options);
  std::size_t begin = first_line_start(broken.items.items);
  for (const BrokenLine& broken_line : broken.breaks.lines) {
    const LineSlot slot = slot_of(options, result.lines.size());
    LineComposer composer(pieces, state_->shaper, result.missing);
    SetLine line = set_one(composer, broken, begin, broken_line, slot, options.align);
    line.top = result.height;
    line.baseline += line.top;
    result.height += line.height;
    result.width = std::max(result.width, line.left + line.width);
    result.lines.push_back(std::move(line));
    begin = line_start(broken.items.items, broken_line.end);
  }
  hand_out_anchors(pieces, result);
  return result;
}

}  // namespace benchleaf::page
