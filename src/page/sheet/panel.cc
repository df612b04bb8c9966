// In: one panel of a chart. Out: a strip: its head with a small note, a rule, and its blocks under each other.
#include "page/sheet/panel.h"

#include <algorithm>
#include <utility>

#include "page/blocks.h"
#include "page/drawing.h"
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

/// Title, and the note on the same line where it has room.
Strip head(Setting& setting, const model::Panel& panel, Length width, TagId section) {
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

/// A table over several columns: as many rows in each, told as tables of their own.
Strip run_on(Setting& setting, const model::Table& table, const PanelWidth& width, TagId parent) {
  const std::size_t parts = static_cast<std::size_t>(width.parts);
  const std::size_t each = (table.rows.size() + parts - 1) / parts;
  Strip whole;
  for (std::size_t part = 0; part * each < table.rows.size(); ++part) {
    model::Table piece = table;
    const auto begin = table.rows.begin() + static_cast<std::ptrdiff_t>(part * each);
    const auto end = table.rows.begin() + static_cast<std::ptrdiff_t>(std::min(table.rows.size(), (part + 1) * each));
    piece.rows.assign(begin, end);
    Strip strip = set_table_strip(setting, piece, width.column, parent);
    whole.height = std::max(whole.height, strip.height);
    overlay(whole, std::move(strip), static_cast<Length>(part) * (width.column + width.gap), 0);
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
