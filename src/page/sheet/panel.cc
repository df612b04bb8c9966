// In: one panel of a chart. Out: a strip: its head with a small note, a rule, and its blocks under each other.
#include "page/sheet/panel.h"

#include <algorithm>
#include <optional>
#include <utility>
#include <variant>

#include "page/blocks.h"
#include "page/drawing.h"
#include "page/sheet/arrange.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

constexpr double kUnderHeadMm = 1.0;
constexpr double kBetweenBlocksMm = 1.4;
constexpr double kBetweenMessagesMm = 2.4;

void put_below(Strip& whole, Strip part, Length before, Length x = 0) {
  const Length y = whole.height + before;
  const Length height = part.height;
  overlay(whole, std::move(part), x, y);
  whole.height = y + height;
}

/// From the top of a strip to the line that its first words stand on.
Length first_line(const Strip& strip) {
  for (const Item& item : strip.items) {
    if (const auto* text = std::get_if<TextItem>(&item.what)) return text->at.y;
  }
  return 0;
}

/// The page at the right end of a head; its width.
Length put_page(Setting& setting, const model::Runs& page, Length width, Length drop, TagId section, Strip& whole) {
  if (page.empty()) return 0;
  const Words words(setting, page, setting.sized(look::table_head()), setting.add_tag(Role::p, section));
  const Length own = words.natural_width(setting);
  overlay(whole, stacked(words.set(setting, own + kPt)), width - own, drop);
  return own + setting.mm(1.6);
}

/// Title, and the note on the same line where it has room; the page of the book at the right.
Strip head(Setting& setting, const model::Panel& panel, Length width, TagId section) {
  const Look look = setting.sized(look::section_head());
  const Look small = setting.sized(look::table_head());
  const Words title(setting, {model::text_run(panel.title)}, look, setting.add_heading(2, section));
  Strip whole = stacked(title.set(setting, width));
  const Length drop = static_cast<Length>((look.leading_pt * 0.77 - small.leading_pt * 0.77) * kPt);
  const Length room = width - put_page(setting, panel.page, width, drop, section, whole);
  if (!panel.note.empty()) {
    const Words note(setting, panel.note, small, setting.add_tag(Role::p, section));
    const Length left = title.natural_width(setting) + setting.mm(1.6);
    const bool beside = left + note.natural_width(setting) <= room;
    Strip words = stacked(note.set(setting, beside ? room - left : width));
    if (beside) {
      overlay(whole, std::move(words), left, drop);
    } else {
      put_below(whole, std::move(words), 0);
    }
  }
  whole.height += setting.mm(0.4);
  whole.items.push_back(rule(0, whole.height, width, 0.75, print_color(model::Ink::ink)));
  whole.height += setting.mm(kUnderHeadMm);
  return whole;
}

/// A panel of one sentence stands on the line of its title, under a rule, where it has room there.
std::optional<Strip> one_line(Setting& setting, const model::Panel& panel, Length width, TagId section) {
  const auto* sentence = panel.blocks.size() == 1 ? std::get_if<model::Paragraph>(&panel.blocks.front()) : nullptr;
  if (sentence == nullptr || !panel.wide || panel.title.empty() || !panel.note.empty()) return std::nullopt;
  const Look heavy = setting.sized(look::section_head());
  const Look look = setting.sized(look::table_cell());
  const Words measured(setting, {model::text_run(panel.title)}, heavy, kLayoutArtifact);
  const Length left = measured.natural_width(setting) + setting.mm(2.4);
  if (left + Words(setting, sentence->runs, look, kLayoutArtifact).natural_width(setting) > width) return std::nullopt;
  const Words title(setting, {model::text_run(panel.title)}, heavy, setting.add_heading(2, section));
  const Words words(setting, sentence->runs, look, setting.add_tag(Role::p, section));
  Strip whole;
  whole.items.push_back(rule(0, 0, width, 0.75, print_color(model::Ink::ink)));
  whole.height = setting.mm(kUnderHeadMm);
  Strip first = stacked(title.set(setting, left));
  Strip then = stacked(words.set(setting, width - left));
  const Length down = std::max(first_line(first), first_line(then));
  const Length title_drop = whole.height + down - first_line(first);
  const Length drop = whole.height + down - first_line(then);
  whole.height = std::max(title_drop + first.height, drop + then.height);
  overlay(whole, std::move(first), 0, title_drop);
  overlay(whole, std::move(then), left, drop);
  return whole;
}

Strip set_table_strip(Setting& setting, const model::Table& table, Length width, TagId parent) {
  Galley galley;
  Target target{galley, width, parent, 1, 2, false, setting.sized(look::table_cell())};
  set_table(setting, table, target);
  return stacked(std::move(galley.strips));
}

/// Rows that are read together, with the drawing that hangs beside them, stay in one column.
bool is_grouped(const model::Table& table) {
  return std::any_of(table.rows.begin(), table.rows.end(), [](const model::TableRow& row) {
    return std::any_of(row.cells.begin(), row.cells.end(), [](const model::TableCell& cell) { return cell.hangs; });
  });
}

/// Where the pieces of a table end that stand side by side, as even as its rows allow.
std::vector<std::size_t> piece_ends(const model::Table& table, std::size_t parts) {
  const bool grouped = is_grouped(table);
  std::vector<PanelSize> groups;
  std::vector<std::size_t> ends;
  Length rows = 0;
  for (std::size_t row = 0; row < table.rows.size(); ++row) {
    ++rows;
    if (grouped && table.rows[row].joins_next && row + 1 < table.rows.size()) continue;
    groups.push_back({rows, false});
    ends.push_back(row + 1);
    rows = 0;
  }
  const Arrangement even = arrange(groups, static_cast<int>(parts), 0);
  std::vector<std::size_t> pieces;
  for (std::size_t group = 0; group < groups.size(); ++group) {
    const bool last = group + 1 == groups.size() || even.places[group + 1].column != even.places[group].column;
    if (last) pieces.push_back(ends[group]);
  }
  return pieces;
}

std::vector<model::Table> pieces_of(const model::Table& table, const std::vector<std::size_t>& ends) {
  std::vector<model::Table> pieces;
  std::size_t begin = 0;
  for (const std::size_t end : ends) {
    model::Table piece = table;
    piece.rows.assign(table.rows.begin() + static_cast<std::ptrdiff_t>(begin),
                      table.rows.begin() + static_cast<std::ptrdiff_t>(end));
    pieces.push_back(std::move(piece));
    begin = end;
  }
  return pieces;
}

/// A table over several columns: as many rows in each, told as tables of their own, at one pitch.
Strip run_on(Setting& setting, const model::Table& table, const PanelWidth& width, TagId parent) {
  const std::vector<model::Table> pieces = pieces_of(table, piece_ends(table, static_cast<std::size_t>(width.parts)));
  Strip whole;
  Length left = 0;
  for (const model::Table& piece : pieces) {
    Strip strip = set_table_strip(setting, piece, width.column, parent);
    whole.height = std::max(whole.height, strip.height);
    overlay(whole, std::move(strip), left, 0);
    left += width.column + width.gap;
  }
  return whole;
}

/// Width at which no cell of a table breaks its words.
Length natural_width(Setting& setting, const model::Table& table) {
  const Look words = setting.sized(look::table_cell());
  const double gap_mm = table.gap_mm > 0 ? table.gap_mm : kColumnGapMm;
  Length whole = from_mm(gap_mm) * (static_cast<Length>(table.columns.size()) - 1);
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    const model::Column& column = table.columns[i];
    const Look look = column.row_head ? bold_of(words) : words;
    Length widest = Words(setting, column.head, setting.sized(look::table_head()), kLayoutArtifact).natural_width(setting);
    for (const model::TableRow& row : table.rows) {
      if (i >= row.cells.size()) continue;
      widest = std::max(widest, Words(setting, row.cells[i].runs, look, kLayoutArtifact).natural_width(setting));
    }
    whole += widest;
  }
  return whole;
}

/// Fewer rows stand under each other, however short they are.
constexpr std::size_t kFewRows = 6;
constexpr double kBetweenPiecesMm = 4;
/// So many rows the eye tells apart without a rule.
constexpr std::size_t kRuleEvery = 5;

/// Short rows stand close; a rule under every fifth, at the same height in pieces that stand side by side.
void rule_by_fives(model::Table& table) {
  for (std::size_t row = 0; row < table.rows.size(); ++row) table.rows[row].joins_next = (row + 1) % kRuleEvery != 0;
}

/// A table within one column: one of short rows in as many pieces side by side as there is room for, rows on one line.
Strip fold(Setting& setting, const model::Table& table, Length width, TagId parent) {
  const Length gap = from_mm(kBetweenPiecesMm);
  const auto parts = static_cast<std::size_t>(std::max<Length>(1, (width + gap) / (natural_width(setting, table) + gap)));
  if (parts < 2 || table.rows.size() < kFewRows || is_grouped(table)) return set_table_strip(setting, table, width, parent);
  const std::size_t rows = (table.rows.size() + parts - 1) / parts;
  std::vector<std::size_t> ends;
  for (std::size_t end = rows; end < table.rows.size(); end += rows) ends.push_back(end);
  ends.push_back(table.rows.size());
  const auto beside = static_cast<Length>(ends.size());
  const Length own = (width - gap * (beside - 1)) / beside;
  Strip whole;
  Length left = 0;
  const Length row_gap = std::exchange(setting.row_gap, 0);
  for (model::Table& piece : pieces_of(table, ends)) {
    rule_by_fives(piece);
    Strip strip = set_table_strip(setting, piece, own, parent);
    whole.height = std::max(whole.height, strip.height);
    overlay(whole, std::move(strip), left, 0);
    left += own + gap;
  }
  setting.row_gap = row_gap;
  return whole;
}

Strip set_messages(Setting& setting, const model::Messages& row, Length width, TagId parent) {
  const auto count = static_cast<Length>(row.messages.size());
  if (count == 0) return {};
  const Length gap = setting.mm(kBetweenMessagesMm);
  const Length own = (width - gap * (count - 1)) / count;
  Length least = 0;
  for (const model::Message& message : row.messages) {
    least = std::max(least, message_strip(setting, message, own, setting.add_tag(Role::div, parent), 0).height);
  }
  Strip whole;
  Length x = 0;
  for (const model::Message& message : row.messages) {
    Strip strip = message_strip(setting, message, own, parent, least);
    whole.height = std::max(whole.height, strip.height);
    overlay(whole, std::move(strip), x, 0);
    x += own + gap;
  }
  return whole;
}

struct BlockSetter {
  Setting& setting;
  const PanelWidth& width;
  TagId section;

  Strip operator()(const model::Paragraph& paragraph) const {
    return stacked(set_paragraph(setting, paragraph.runs, setting.sized(look::table_cell()), width.whole(), section, 0));
  }
  Strip operator()(const model::Table& table) const {
    return width.parts > 1 ? run_on(setting, table, width, section) : fold(setting, table, width.column, section);
  }
  Strip operator()(const model::Matrix& matrix) const { return set_matrix(setting, matrix, width.whole(), section); }
  Strip operator()(const model::Pictures& row) const { return set_pictures(setting, row, width.whole(), section); }
  Strip operator()(const model::Fields& fields) const { return set_fields(setting, fields, width.whole(), section); }
  Strip operator()(const model::Messages& row) const { return set_messages(setting, row, width.whole(), section); }
};

/// Messages need no head: their own word stands at the top.
bool says_itself(const model::Panel& panel) {
  return panel.blocks.size() == 1 && std::holds_alternative<model::Messages>(panel.blocks.front());
}

}  // namespace

Strip set_panel(Setting& setting, const model::Panel& panel, const PanelWidth& width, TagId parent) {
  const TagId section = setting.add_tag(Role::sect, parent);
  if (auto line = one_line(setting, panel, width.whole(), section)) return std::move(*line);
  Strip whole;
  if (!panel.title.empty() && !says_itself(panel)) whole = head(setting, panel, width.whole(), section);
  bool first = true;
  for (const model::PanelBlock& block : panel.blocks) {
    put_below(whole, std::visit(BlockSetter{setting, width, section}, block), first ? 0 : setting.mm(kBetweenBlocksMm));
    first = false;
  }
  return whole;
}

}  // namespace benchleaf::page
