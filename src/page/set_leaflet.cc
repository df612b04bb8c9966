// In: a leaflet, a paper, fonts. Out: its pages. One side of a sheet is read by itself at the bench, so that each sheet carries
// its own head, and each page a foot with number and legend.
#include "page/set_leaflet.h"

#include <algorithm>
#include <numeric>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "page/blocks.h"
#include "page/drawing.h"
#include "page/fill.h"
#include "page/finish.h"
#include "page/packed.h"
#include "page/pen.h"
#include "page/slots.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

constexpr double kEdgeMm = 11;
constexpr double kTopMm = 8;
constexpr double kFootMm = 12.5;
constexpr double kGutterMm = 5;
constexpr double kBetweenRowsMm = 1.0;
constexpr double kMostBetweenRowsMm = 4;
constexpr double kLeastPt = 9.6;     // read at arm's length
constexpr double kAirOfBook = 0.35;  // a sheet stands closer than a book
constexpr double kRowGapMm = 0.4;    // between two rows of a table, the rule in its middle
constexpr double kHoleMm = 5;
constexpr double kCutMm = 3;  // room for the line to cut along

/// The paper of a book without its margin for notes.
Paper without_notes(Paper paper) {
  paper.inner = from_mm(kEdgeMm);
  paper.block_width = paper.width - 2 * paper.inner;
  paper.block_top = from_mm(kTopMm);
  paper.block_height = paper.height - from_mm(kTopMm + kFootMm);
  return paper;
}

/// Key, title and what is filled in at the right, over a thick rule.
Strip head_of(Setting& setting, const model::LeafletSheet& sheet, TagId part) {
  const Length width = setting.paper.block_width;
  const Length side = sheet.right.empty() ? 0 : from_mm(62);
  const TagId heading = setting.add_heading(1, part);
  Strip head;
  Length left = 0;
  if (!sheet.key.empty()) {
    PlainLine key = set_plain(setting, sheet.key, look::sheet_key(), heading);
    head = stacked(Words(setting, {model::text_run(sheet.key)}, look::sheet_key(), heading).set(setting, width));
    left = key.width + from_mm(4);
  }
  Look title = look::short_title();
  title.size_pt = 15;
  title.leading_pt = 16.5;
  Strips lines = Words(setting, {model::text_run(sheet.title)}, title, heading).set(setting, width - left - side - from_mm(8));
  if (!sheet.subtitle.empty()) {
    for (Strip& line : set_paragraph(setting, {model::text_run(sheet.subtitle)}, setting.sized(look::table_cell()),
                                     width - left - side - from_mm(8), part, 0))
      lines.push_back(std::move(line));
  }
  Strip words = stacked(std::move(lines));
  head.height = std::max(head.height, words.height);
  overlay(head, std::move(words), left, 0);
  Strips blanks;
  for (const model::Runs& line : sheet.right) {
    for (Strip& strip : set_paragraph(setting, line, setting.sized(look::table_cell()), side, part, from_mm(1.2)))
      blanks.push_back(std::move(strip));
  }
  Strip right = stacked(std::move(blanks));
  head.height = std::max(head.height, right.height);
  overlay(head, std::move(right), width - side, 0);
  if (!sheet.anchor.empty()) head.places.push_back({sheet.anchor, 0});
  head.height += from_mm(1);
  head.items.push_back(rule(0, head.height, width, 1.5, print_color(model::Ink::ink)));
  head.height += from_mm(1);
  head.keep_next = true;
  return head;
}

/// The columns of a row, each set by itself.
struct SetRow {
  std::vector<Strips> columns;
  std::vector<Length> left;
  bool whole = true;
  bool cut_above = false;
  Length above = 0;  ///< more room over it
};

SetRow set_row(Setting& setting, const model::LeafletRow& row, TagId part) {
  SetRow set;
  set.whole = row.whole;
  set.cut_above = row.cut_above;
  const auto count = static_cast<Length>(row.columns.size());
  const Length room = setting.paper.block_width - (count - 1) * from_mm(kGutterMm);
  const double shares = std::accumulate(row.columns.begin(), row.columns.end(), 0.0,
                                        [](double sum, const auto& column) { return sum + column.share; });
  Length left = 0;
  for (const model::LeafletRow::Column& column : row.columns) {
    const auto width = static_cast<Length>(static_cast<double>(room) * column.share / shares);
    Galley galley;
    Target target{galley, width, part, 1, 2, false, look::entry_body()};
    set_blocks(setting, column.blocks, target);
    for (Strip& strip : galley.strips) strip.before = static_cast<Length>(static_cast<double>(strip.before) * kAirOfBook);
    set.columns.push_back(std::move(galley.strips));
    set.left.push_back(left);
    left += width + from_mm(kGutterMm);
  }
  return set;
}

/// Puts sheets on pages, row under row.
class SheetFiller {
 public:
  SheetFiller(Setting& setting, std::vector<Strip>& pages) : setting_(setting), pages_(pages) {}

  void put(const model::LeafletSheet& sheet, TagId part) {
    Strip head = head_of(setting_, sheet, part);
    std::vector<SetRow> rows;
    Length height = head.height;
    for (const model::LeafletRow& row : sheet.rows) {
      rows.push_back(set_row(setting_, row, part));
      height += from_mm(kBetweenRowsMm) + height_of(rows.back());
    }
    const bool shares = sheet.may_share && !pages_.empty() && y_ + from_mm(2 * kBetweenRowsMm) + height <= room();
    if (!shares) open_page();
    if (shares) y_ += from_mm(2 * kBetweenRowsMm);
    const Length top = head.height;
    overlay(pages_.back(), std::move(head), 0, y_);
    y_ += top;
    spread(rows, sheet, height);
    for (SetRow& row : rows) place(std::move(row));
    between_ = from_mm(kBetweenRowsMm);
  }

 private:
  Length room() const { return setting_.paper.block_height; }

  /// Gives the room that a sheet of one page leaves to its rows; what is cut off stands at the foot.
  void spread(std::vector<SetRow>& rows, const model::LeafletSheet& sheet, Length height) {
    if (sheet.may_share || rows.empty() || height > room()) return;
    const Length spare = room() - height;
    const Length each = std::min(spare / static_cast<Length>(rows.size()), from_mm(kMostBetweenRowsMm - kBetweenRowsMm));
    between_ += each;
    if (rows.back().cut_above) rows.back().above = spare - each * static_cast<Length>(rows.size());
  }

  void open_page() {
    Strip page;
    page.new_page = true;
    page.height = room();
    pages_.push_back(std::move(page));
    y_ = 0;
  }

  static Length height_of(const SetRow& row) {
    Length most = 0;
    for (const Strips& column : row.columns) most = std::max(most, total_height(column));
    return most + (row.cut_above ? from_mm(kCutMm) : 0);
  }

  void cut() {
    PathItem dashes;
    dashes.stroke = print_color(model::Ink::ink);
    dashes.stroke_width = 500;
    for (Length x = 0; x < setting_.paper.block_width; x += from_mm(3)) {
      dashes.segments.push_back({PathSegment::Op::move, {x, y_ + from_mm(1.5)}, {}, {}});
      dashes.segments.push_back({PathSegment::Op::line, {x + from_mm(1.6), y_ + from_mm(1.5)}, {}, {}});
    }
    pages_.back().items.push_back({kLayoutArtifact, std::move(dashes)});
    y_ += from_mm(kCutMm);
  }

  void place(SetRow row) {
    y_ += between_ + row.above;
    const Length height = height_of(row);
    if (y_ + height > room() && (row.whole ? height <= room() : y_ > room() - from_mm(40))) open_page();
    if (row.cut_above) cut();
    std::vector<std::size_t> at(row.columns.size(), 0);
    while (true) {
      Length deepest = y_;
      bool left_over = false;
      for (std::size_t i = 0; i < row.columns.size(); ++i) {
        const Length end = fill(row.columns[i], at[i], row.left[i]);
        deepest = std::max(deepest, end);
        left_over = left_over || at[i] < row.columns[i].size();
      }
      y_ = deepest;
      if (!left_over) return;
      open_page();
    }
  }

  /// Strips of a column from place `at` on, as far as the page goes; a chain of keeps moves as one unless it is taller than a
  /// page.
  Length fill(Strips& column, std::size_t& at, Length left) {
    Length y = y_;
    while (at < column.size()) {
      std::size_t end = at + 1;
      const Length before = y > y_ ? column[at].before : 0;
      Length height = before + column[at].height;
      while (column[end - 1].keep_next && end < column.size()) height += column[end].before + column[end].height, ++end;
      const auto is_message = [&](std::size_t place) { return place < end && column[place].message; };
      const bool stack = is_message(at) && is_message(at + 1) && is_message(at + 2);
      // taller than a page, or more than two messages before a step: the keep gives way
      if (height > room() || (stack && y + height > room())) {
        end = at + 1;
        height = before + column[at].height;
      }
      if (y + height > room() && y > 0) return y;
      for (bool first = true; at < end; ++at, first = false) {
        y += first ? before : column[at].before;
        const Length own = column[at].height;
        overlay(pages_.back(), std::move(column[at]), left, y);
        y += own;
      }
    }
    return y;
  }

  Setting& setting_;
  std::vector<Strip>& pages_;
  Length y_ = 0;
  Length between_ = from_mm(kBetweenRowsMm);
};

/// The signs that stand on a page, in the order of the legend.
struct Signs {
  std::vector<model::Trust> trusts;
  bool derived = false;
};

Signs signs_on(const Page& page) {
  std::set<model::Trust> seen;
  Signs signs;
  for_each_item(page, [&](const Item& item) {
    const auto* sign = std::get_if<SignItem>(&item.what);
    if (sign == nullptr) return;
    seen.insert(sign->trust);
    signs.derived = signs.derived || sign->derived;
  });
  for (const model::Trust trust : all_trusts()) {
    if (seen.count(trust) > 0) signs.trusts.push_back(trust);
  }
  return signs;
}

void add_anchors(const model::Blocks& blocks, std::set<std::string>& anchors) {
  for (const model::Block& block : blocks) {
    const auto* message = std::get_if<model::Message>(&block.what);
    if (message != nullptr && !message->anchor.empty()) anchors.insert(message->anchor);
  }
}

/// Every place of a leaflet that a page number may lead to.
std::set<std::string> anchors_of(const model::Leaflet& leaflet) {
  std::set<std::string> anchors;
  for (const model::LeafletSheet& sheet : leaflet.sheets) {
    if (!sheet.anchor.empty()) anchors.insert(sheet.anchor);
    for (const model::LeafletRow& row : sheet.rows) {
      for (const auto& column : row.columns) add_anchors(column.blocks, anchors);
    }
  }
  return anchors;
}

void furnish(Setting& setting, const model::Leaflet& leaflet, const std::string& label, std::size_t count, Page& page) {
  const Paper& paper = setting.paper;
  const Signs signs = signs_on(page);
  Pen pen(setting, page);
  const Length left = paper.inner;
  const Length right = paper.width - paper.inner;
  const Length top = paper.height - from_mm(kFootMm - 1.5);
  if (!signs.trusts.empty()) pen.legend({left, top, right, 0}, setting.sized(look::legend()), signs.trusts, signs.derived);
  const Length baseline = paper.height - from_mm(4.5);
  pen.words({model::text_run(leaflet.title + ", page " + label + " of " + std::to_string(count))}, setting.sized(look::alias()),
            right, baseline, Pen::From::right);
  pen.words({model::text_run(leaflet.imprint)}, setting.sized(look::folio_line()), left, baseline, Pen::From::left);
  model::PathShape hole = model::circle({0, 0}, kHoleMm / 2);
  hole.stroke = model::Ink::second_ink;
  hole.stroke_mm = 0.09;
  pen.path(hole, paper.width / 2, from_mm(kHoleMm / 2 + 3));
}

PageNumbers numbers_of(const PageStack& stack) {
  PageNumbers numbers;
  for (const auto& [anchor, destination] : stack.destinations)
    numbers.emplace(anchor, stack.pages[static_cast<std::size_t>(destination.page)].label);
  return numbers;
}

}  // namespace

Document set_leaflet(const model::Leaflet& leaflet, const Paper& paper, const FontSet& fonts, const Hyphenator* hyphenator,
                     report::Findings& findings) {
  TextSetter text(fonts, hyphenator);
  Document document;
  document.title = leaflet.title;
  document.subject = leaflet.subtitle;
  document.language = leaflet.language;
  document.iso_date = leaflet.iso_date;
  const Paper wide = without_notes(paper);
  Setting setting{text, findings, wide, document.tags, anchors_of(leaflet), {}, {}};
  setting.least_pt = kLeastPt;
  setting.dense = true;
  setting.row_gap = from_mm(kRowGapMm);
  setting.widest_number = "88";
  const TagId root = setting.add_tag(Role::document, kLayoutArtifact);
  Galley galley;
  SheetFiller filler(setting, galley.strips);
  for (const model::LeafletSheet& sheet : leaflet.sheets) filler.put(sheet, setting.add_tag(Role::part, root));
  PageStack stack;
  fill_pages(std::move(galley), wide, -1, stack);
  for (std::size_t i = 0; i < stack.pages.size(); ++i) stack.pages[i].label = std::to_string(i + 1);
  fill_slots(setting, numbers_of(stack), stack);
  for (Page& page : stack.pages) furnish(setting, leaflet, page.label, stack.pages.size(), page);
  join(document, {}, std::move(stack));
  for (const OutlineLine& line : setting.outline) document.bookmarks.push_back({1, line.title, line.anchor});
  box_figures(document);
  prune_tags(document);
  return document;
}

}  // namespace benchleaf::page
