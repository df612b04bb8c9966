#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "model/book.h"
#include "page/setting.h"

namespace benchleaf::page {

/// Running text of the book made ready for the text engine: styled pieces, signs and slots as boxes, and the structure
/// elements of its links and facts. Built once, then measured and set as often as a table needs.
class Words {
 public:
  Words(Setting& setting, const model::Runs& runs, const Look& look, TagId parent);

  bool empty() const { return pieces_.empty(); }
  Length natural_width(Setting& setting) const;
  Length minimum_width(Setting& setting) const;

  /// One strip a line, `width` wide at most; the flush of the look may be replaced.
  Strips set(Setting& setting, Length width) const;
  Strips set(Setting& setting, Length width, Look::Flush flush) const;

  /// Distance from the left end of the words to their first decimal point, as if on one line; the whole width where
  /// there is no number.
  Length point_offset(Setting& setting) const;

 private:
  /// What a box in the line shows, from its left end on the baseline.
  struct BoxContent {
    std::vector<Item> items;
    std::vector<Slot> slots;
  };

  void add_text(Setting& setting, const model::Run& run, TagId parent);
  void add_piece(const model::Run& run, TagId tag, TagId link);
  void add_box(BoxContent content, Length width, Length height, Length depth, TagId link, const std::string& target);
  void add_trust(const model::Run& run, TagId parent);
  void add_verdict(Setting& setting, const model::Run& run, TagId parent);
  void add_verdict_mark(Setting& setting, const model::Run& run, TagId parent);
  void add_source_key(Setting& setting, const model::Run& run, TagId parent);
  void add_slot(Setting& setting, const model::Run& run, TagId parent);
  void add_blank(const model::Run& run);
  void add_tick();
  TagId link_tag(Setting& setting, const model::Run& run, TagId parent);
  TextStyle style(model::Style wanted) const;
  Strip strip_of(const SetLine& line) const;

  Look look_;
  TagId parent_;
  std::vector<Piece> pieces_;
  std::vector<TagId> links_;  ///< link element of each piece, or an artifact id
  std::vector<BoxContent> boxes_;
};

/// Words on one line without breaking, from the left end on the baseline.
struct PlainLine {
  std::vector<Item> items;
  Length width = 0;
};
PlainLine set_plain(Setting& setting, std::string_view text, const Look& look, TagId tag);

/// Turns a line about its left end, which comes to lie at `at`: 1 runs down the page, 3 up.
void turn(PlainLine& line, Point at, int quarter_turns);

/// Keeps the first two and the last two lines of a paragraph together.
void keep_lines(Strips& lines);

/// A paragraph element under `parent` with the words in it, lines kept, `before` above the first.
Strips set_paragraph(Setting& setting, const model::Runs& runs, const Look& look, Length width, TagId parent, Length before);

}  // namespace benchleaf::page
