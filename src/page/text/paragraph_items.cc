// In: the pieces of a paragraph. Out: words, spaces and boxes in a row, and the same as items of the line breaker.
#include "page/text/paragraph_items.h"

#include <algorithm>
#include <utility>

#include "base/utf8.h"

namespace benchleaf::page {

namespace {

constexpr std::string_view kNoBreakSpace = "\xC2\xA0";
constexpr int kSlashPenalty = 100;
constexpr int kCompoundPenalty = 150;  ///< on top of that of a hyphen

/// Spaces of a justified line give and take in the proportions of the 1981 paper: a half and a third of themselves.
constexpr Length kStretchPart = 2;
constexpr Length kShrinkPart = 3;

bool is_space(char c) { return c == ' ' || c == '\t' || c == '\r'; }

/// Reads one paragraph; lives for one call.
class Reader {
 public:
  Reader(const std::vector<Piece>& pieces, const Hyphenator* hyphenator, WordBreaks& known)
      : pieces_(pieces), hyphenator_(hyphenator), known_(known) {
    for (const Piece& piece : pieces_) {
      begins_.push_back(guided_.text.size());
      if (piece.box) {
        guided_.text += "\xEF\xBF\xBC";
      } else {
        append_guided(guided_, piece.text);
      }
    }
  }

  ParagraphText read() {
    const std::string& text = guided_.text;
    for (std::size_t at = 0; at < text.size();) {
      if (is_space(text[at])) {
        add_space(at, at + 1, true);
        ++at;
      } else if (text[at] == '\n') {
        end_line(at);
        ++at;
      } else {
        std::size_t end = at;
        while (end < text.size() && !is_space(text[end]) && text[end] != '\n') ++end;
        add_word(at, end);
        at = end;
      }
    }
    drop_space();
    return {std::move(guided_.text), std::move(atoms_)};
  }

 private:
  int piece_at(std::size_t at) {
    // at only grows: the pieces are walked once
    while (piece_ + 1 < pieces_.size() && begins_[piece_ + 1] <= at) ++piece_;
    return static_cast<int>(piece_);
  }
  std::size_t piece_end() const { return piece_ + 1 < pieces_.size() ? begins_[piece_ + 1] : guided_.text.size(); }

  bool at_line_start() const { return atoms_.empty() || atoms_.back().kind == Atom::Kind::line_end; }

  void add_space(std::size_t begin, std::size_t end, bool breakable) {
    const int piece = piece_at(begin);
    if (breakable && (at_line_start() || atoms_.back().kind == Atom::Kind::space)) return;
    atoms_.push_back({Atom::Kind::space, piece, begin, end, breakable && !dash_follows(end), {}});
  }

  /// A dash between two spaces belongs to the word before: no line begins with one.
  bool dash_follows(std::size_t at) const {
    const base::Utf8Step step = at < guided_.text.size() ? base::next_code_point(guided_.text, at) : base::Utf8Step{};
    if (step.code != U'\u2013' && step.code != U'\u2014') return false;
    const std::size_t behind = at + step.length;
    return behind < guided_.text.size() && is_space(guided_.text[behind]);
  }

  void drop_space() {
    while (!atoms_.empty() && atoms_.back().kind == Atom::Kind::space && atoms_.back().breakable) atoms_.pop_back();
  }

  void end_line(std::size_t at) {
    const int piece = piece_at(at);
    drop_space();
    atoms_.push_back({Atom::Kind::line_end, piece, at, at + 1, true, {}});
  }

  /// Most words have no sign in them at which they could be parted without the dictionary.
  static bool is_plain(std::string_view word) {
    return std::all_of(word.begin(), word.end(),
                       [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == ',' || c == '.'; });
  }

  const std::vector<BreakPoint>& own_breaks(std::string_view word) {
    static const std::vector<BreakPoint> kNone;
    if (hyphenator_ == nullptr && is_plain(word)) return kNone;
    const auto known = known_.find(word);
    if (known != known_.end()) return known->second;
    return known_.emplace(std::string(word), word_breaks(word, hyphenator_)).first->second;
  }

  /// The word's own breaks and the writer's, less those at a joiner.
  std::vector<BreakPoint> all_breaks(std::size_t begin, std::size_t end) {
    std::vector<BreakPoint> breaks;
    const auto add = [&](BreakPoint point) {
      const bool joined = std::find(guided_.joins.begin(), guided_.joins.end(), point.at) != guided_.joins.end();
      if (!joined) breaks.push_back(point);
    };
    for (; next_guide_ < guided_.breaks.size() && guided_.breaks[next_guide_].at < end; ++next_guide_) {
      if (guided_.breaks[next_guide_].at > begin) add(guided_.breaks[next_guide_]);
    }
    for (BreakPoint point : own_breaks(std::string_view(guided_.text).substr(begin, end - begin))) {
      point.at += begin;
      add(point);
    }
    std::stable_sort(breaks.begin(), breaks.end(), [](const BreakPoint& a, const BreakPoint& b) { return a.at < b.at; });
    breaks.erase(std::unique(breaks.begin(), breaks.end(), [](const BreakPoint& a, const BreakPoint& b) { return a.at == b.at; }),
                 breaks.end());
    return breaks;
  }

  /// Parts a word at the borders of its pieces and at spaces that do not break.
  void add_word(std::size_t begin, std::size_t end) {
    const std::vector<BreakPoint> breaks = all_breaks(begin, end);
    std::size_t next = 0;
    for (std::size_t at = begin; at < end;) {
      const int piece = piece_at(at);
      if (pieces_[static_cast<std::size_t>(piece)].box) {
        atoms_.push_back({Atom::Kind::box, piece, at, piece_end(), true, {}});
        at = piece_end();
        take_breaks(breaks, next);
        continue;
      }
      const std::string_view rest = std::string_view(guided_.text).substr(at, std::min(end, piece_end()) - at);
      if (rest.substr(0, kNoBreakSpace.size()) == kNoBreakSpace) {
        add_space(at, at + kNoBreakSpace.size(), false);
        at += kNoBreakSpace.size();
        continue;
      }
      const std::size_t length = std::min(rest.find(kNoBreakSpace), rest.size());
      atoms_.push_back({Atom::Kind::word, piece, at, at + length, true, {}});
      at += length;
      take_breaks(breaks, next);
    }
  }

  /// Gives the last atom the breaks up to its end. No hyphen is put behind a box.
  void take_breaks(const std::vector<BreakPoint>& breaks, std::size_t& next) {
    Atom& atom = atoms_.back();
    for (; next < breaks.size() && breaks[next].at <= atom.end; ++next) {
      const bool fits = atom.kind == Atom::Kind::word || !puts_hyphen(breaks[next].kind);
      if (fits && breaks[next].at > atom.begin) atom.breaks.push_back(breaks[next]);
    }
  }

  const std::vector<Piece>& pieces_;
  const Hyphenator* hyphenator_;
  WordBreaks& known_;
  GuidedText guided_;
  std::vector<std::size_t> begins_;
  std::size_t piece_ = 0;
  std::size_t next_guide_ = 0;
  std::vector<Atom> atoms_;
};

/// Writes the items of one paragraph.
class ItemWriter {
 public:
  ItemWriter(const ParagraphText& paragraph, const std::vector<Piece>& pieces, Shaper& shaper, const ItemOptions& options)
      : paragraph_(paragraph), pieces_(pieces), shaper_(shaper), options_(options) {}

  ParagraphItems write() {
    result_.shapes.resize(paragraph_.atoms.size(), nullptr);
    result_.items.reserve(2 * paragraph_.atoms.size() + 3);
    result_.sources.reserve(2 * paragraph_.atoms.size() + 3);
    bool empty_line = true;
    for (std::size_t i = 0; i < paragraph_.atoms.size(); ++i) {
      const Atom& atom = paragraph_.atoms[i];
      switch (atom.kind) {
        case Atom::Kind::word: add_word(i); break;
        case Atom::Kind::space: add_space(i); break;
        case Atom::Kind::box:
          add_box(i, pieces_[static_cast<std::size_t>(atom.piece)].box->width);
          add_breaks(i, {}, 0);
          break;
        case Atom::Kind::line_end:
          if (empty_line) add_box(i, 0);
          add_line_end(i);
          break;
      }
      empty_line = atom.kind == Atom::Kind::line_end;
    }
    if (!empty_line) add_line_end(paragraph_.atoms.size() - 1);
    return std::move(result_);
  }

 private:
  void push(const BreakItem& item, const ItemSource& source) {
    result_.items.push_back(item);
    result_.sources.push_back(source);
  }

  void add_box(std::size_t atom, Length width) {
    BreakItem box;
    box.width = width;
    push(box, {atom, 0, false});
  }

  void add_no_break(std::size_t atom) {
    BreakItem stop;
    stop.kind = BreakItem::Kind::penalty;
    stop.penalty = kNoBreak;
    push(stop, {atom, 0, false});
  }

  void add_line_end(std::size_t atom) {
    add_no_break(atom);
    BreakItem fill;
    fill.kind = BreakItem::Kind::glue;
    fill.fill = true;
    push(fill, {atom, 0, false});
    BreakItem end;
    end.kind = BreakItem::Kind::penalty;
    end.penalty = kForcedBreak;
    end.flagged = true;  // as in the paper: so a hyphen in the last line but one costs extra
    push(end, {atom, 0, false});
  }

  void add_space(std::size_t index) {
    const Atom& atom = paragraph_.atoms[index];
    if (!atom.breakable) add_no_break(index);
    BreakItem glue;
    glue.kind = BreakItem::Kind::glue;
    glue.width = space_width(atom.piece);
    if (options_.justify && glue.width > 0) {
      glue.stretch = glue.width / kStretchPart;
      glue.shrink = glue.width / kShrinkPart;
    }
    push(glue, {index, 0, false});
  }

  Length space_width(int piece) {
    if (piece != space_piece_) {
      space_piece_ = piece;
      space_width_ = shaper_.width(" ", pieces_[static_cast<std::size_t>(piece)].style);
    }
    return space_width_;
  }

  BreakItem penalty_of(BreakPoint::Kind kind) const {
    BreakItem item;
    item.kind = BreakItem::Kind::penalty;
    item.flagged = kind != BreakPoint::Kind::bare;
    item.penalty = kind == BreakPoint::Kind::bare ? kSlashPenalty : options_.hyphen_penalty;
    if (kind == BreakPoint::Kind::compound) item.penalty += kCompoundPenalty;
    return item;
  }

  void add_word(std::size_t index) {
    const Atom& atom = paragraph_.atoms[index];
    const TextStyle& style = pieces_[static_cast<std::size_t>(atom.piece)].style;
    const std::string_view word = std::string_view(paragraph_.text).substr(atom.begin, atom.end - atom.begin);
    const ShapedText& shaped = shaper_.shape(word, style.face, style.tabular);
    result_.shapes[index] = &shaped;
    const Length whole = shaper_.width(shaped, style);
    const Length done = add_breaks(index, word, whole);
    if (atom.breaks.empty() || atom.breaks.back().at < atom.end) add_box(index, whole - done);
  }

  /// A box and a penalty for each break of a word. What parting changes in width (the hyphen, kerning and ligatures
  /// across the break) goes into the penalty. Gives the width set so far.
  Length add_breaks(std::size_t index, std::string_view word, Length whole) {
    const Atom& atom = paragraph_.atoms[index];
    const TextStyle& style = pieces_[static_cast<std::size_t>(atom.piece)].style;
    Length done = 0;
    for (const BreakPoint& point : atom.breaks) {
      const std::size_t offset = point.at - atom.begin;
      BreakItem item = penalty_of(point.kind);
      const std::string hyphen = puts_hyphen(point.kind) ? "-" : "";
      Length before = whole;
      if (offset < word.size()) {
        before = shaper_.width_before(*result_.shapes[index], offset, style);
        item.width = shaper_.width(std::string(word.substr(0, offset)) + hyphen, style) - before;
        item.after = shaper_.width(word.substr(offset), style) - (whole - before);
      } else if (!hyphen.empty()) {
        item.width = shaper_.width(std::string(word) + hyphen, style) - whole;
      }
      if (!word.empty()) add_box(index, before - done);
      push(item, {index, point.at, puts_hyphen(point.kind)});
      done = before;
    }
    return done;
  }

  const ParagraphText& paragraph_;
  const std::vector<Piece>& pieces_;
  Shaper& shaper_;
  const ItemOptions& options_;
  int space_piece_ = -1;  ///< whose space is `space_width_` wide
  Length space_width_ = 0;
  ParagraphItems result_;
};

}  // namespace

ParagraphText read_pieces(const std::vector<Piece>& pieces, const Hyphenator* hyphenator, WordBreaks& known) {
  return Reader(pieces, hyphenator, known).read();
}

ParagraphItems make_items(const ParagraphText& paragraph, const std::vector<Piece>& pieces, Shaper& shaper,
                          const ItemOptions& options) {
  if (paragraph.atoms.empty()) return {};
  return ItemWriter(paragraph, pieces, shaper, options).write();
}

}  // namespace benchleaf::page
