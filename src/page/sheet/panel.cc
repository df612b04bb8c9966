// In: one panel of a chart. Out: a strip: its head with a small note, a rule, and its blocks under each other.
#include "page/sheet/panel.h"

#include <algorithm>
#include <utility>

#include "page/blocks.h"
#include "page/drawing.h"
#include "page/sheet/arrange.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

constexpr double kUnderHeadMm = 1.0;
constexpr double kBetweenBlocksMm = 1.4;

void put_below(Strip& whole, Strip part, Length before, Length x = 0) {
  const Length y = whole.height + before;
  const Length height = part.height;
  overlay(whole, std::move(part), x, y);
  whole.height = y + height;
}

/// Title in white on a strip of red, dark enough for either to be read in grey.
Strip alarm_head(Setting& setting, const model::Panel& panel, Length width, TagId section) {
  const Color paper = print_color(model::Ink::paper);
  const Length pad = setting.mm(2.4);
  const Words title(setting, {model::text_run(panel.title)}, in_color(setting.sized(look::section_head()), paper),
                    setting.add_heading(2, section));
  Strip words = stacked(title.set(setting, width - 2 * pad));
  Strip whole;
  whole.height = words.height + setting.mm(0.8);
  whole.items.push_back(ground({0, 0, width, whole.height}, alarm_ground()));
  if (!panel.note.empty()) {
    const Words note(setting, panel.note, in_color(setting.sized(look::table_cell()), paper), setting.add_tag(Role::p, section));
    const Length left = pad + title.natural_width(setting) + setting.mm(2.4);
    Strip small = stacked(note.set(setting, width - left - pad));
    const Length down = words.baseline + setting.mm(0.4) - small.baseline;
    overlay(whole, std::move(small), left, down);
  }
  overlay(whole, std::move(words), pad, setting.mm(0.4));
  whole.height += setting.mm(kUnderHeadMm);
  return whole;
}

/// Title, and the note on the same line where it has room.
Strip head(Setting& setting, const model::Panel& panel, Length width, TagId section) {
  if (panel.alarm) return alarm_head(setting, panel, width, section);
  const Look look = setting.sized(look::section_head());
  const Look small = setting.sized(look::table_head());
  const Words title(setting, {model::text_run(panel.title)}, look, setting.add_heading(2, section));
  Strip whole = stacked(title.set(setting, width));
  if (!panel.note.empty()) {
    const Words note(setting, panel.note, small, setting.add_tag(Role::p, section));
    const Length left = title.natural_width(setting) + setting.mm(1.6);
    const bool beside = left + note.natural_width(setting) <= width;
    Strip words = stacked(note.set(setting, beside ? width - left : width));
    if (beside) {
      const Length drop = static_cast<Length>((look.leading_pt * 0.77 - small.leading_pt * 0.77) * kPt);
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

/// More room than this between rows parts them.
constexpr double kMostEvenMm = 4;

/// A table over several columns: as many rows in each, told as tables of their own. The shorter ones get more air, so that
/// all end together.
Strip run_on(Setting& setting, const model::Table& table, const PanelWidth& width, TagId parent) {
  std::vector<model::Table> pieces;
  Length highest = 0;
  std::size_t begin = 0;
  for (const std::size_t end : piece_ends(table, static_cast<std::size_t>(width.parts))) {
    model::Table piece = table;
    piece.rows.assign(table.rows.begin() + static_cast<std::ptrdiff_t>(begin),
                      table.rows.begin() + static_cast<std::ptrdiff_t>(end));
    highest = std::max(highest, set_table_strip(setting, piece, width.column, parent).height);
    pieces.push_back(std::move(piece));
    begin = end;
  }
  Strip whole;
  Length left = 0;
  const Length air = setting.row_air;
  for (const model::Table& piece : pieces) {
    const Length spare = highest - set_table_strip(setting, piece, width.column, parent).height;
    setting.row_air = air + std::min(from_mm(kMostEvenMm), spare / static_cast<Length>(piece.rows.size()));
    Strip strip = set_table_strip(setting, piece, width.column, parent);
    setting.row_air = air;
    whole.height = std::max(whole.height, strip.height);
    overlay(whole, std::move(strip), left, 0);
    left += width.column + width.gap;
  }
  return whole;
}

Strip set_messages(Setting& setting, const model::Messages& row, Length width, TagId parent) {
  const auto count = static_cast<Length>(row.messages.size());
  if (count == 0) return {};
  const Length gap = setting.mm(2.4);
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
    return width.parts > 1 ? run_on(setting, table, width, section) : set_table_strip(setting, table, width.column, section);
  }
  Strip operator()(const model::Matrix& matrix) const { return set_matrix(setting, matrix, width.whole(), section); }
  Strip operator()(const model::Pictures& row) const { return set_pictures(setting, row, width.whole(), section); }
  Strip operator()(const model::Messages& row) const { return set_messages(setting, row, width.whole(), section); }
};

}  // namespace

Strip set_panel(Setting& setting, const model::Panel& panel, const PanelWidth& width, TagId parent) {
  const TagId section = setting.add_tag(Role::sect, parent);
  Strip whole;
  if (!panel.title.empty()) whole = head(setting, panel, width.whole(), section);
  bool first = true;
  for (const model::PanelBlock& block : panel.blocks) {
    put_below(whole, std::visit(BlockSetter{setting, width, section}, block), first ? 0 : setting.mm(kBetweenBlocksMm));
    first = false;
  }
  return whole;
}

}  // namespace benchleaf::page
