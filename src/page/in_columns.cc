// In: blocks one after the other. Out: strips: what reads well in a narrow measure goes into two columns, the rest over the
// whole width.
#include <algorithm>
#include <optional>
#include <utility>

#include "page/blocks.h"
#include "page/columns.h"

namespace benchleaf::page {
namespace {

constexpr int kColumns = 2;
/// In a column a table may be this much higher than over the whole width, and still save room.
constexpr double kNarrowTable = 1.5;

/// Nothing where it is wider than that.
std::optional<Length> height_at(Setting& setting, const model::Table& table, Length width) {
  report::Findings unsaid;
  const std::size_t tags = setting.tags.size();
  Setting trial{setting.text, unsaid, setting.paper, setting.tags, setting.anchors, setting.widest_number, {}};
  Galley galley;
  Target target{galley, width, 0, 1, 2, false, look::body()};
  set_table(trial, table, target);
  setting.tags.resize(tags);
  if (!unsaid.all().empty()) return std::nullopt;
  return total_height(galley.strips);
}

bool is_narrow(Setting& setting, const model::Table& table, Length width) {
  if (table.columns.size() > 6) return false;
  const std::optional<Length> narrow = height_at(setting, table, column_width(width, kColumns));
  if (!narrow) return false;
  const std::optional<Length> wide = height_at(setting, table, width);
  return !wide || static_cast<double>(*narrow) <= kNarrowTable * static_cast<double>(*wide);
}

bool announces(const model::Paragraph& paragraph) {
  const std::string words = model::plain_text(paragraph.runs);
  return !words.empty() && words.back() == ':';
}

bool goes_in_columns(Setting& setting, std::span<const model::Block* const> blocks, std::size_t at, Length width);

/// Whether what follows goes into columns, so that what leads to it may too.
bool next_does(Setting& setting, std::span<const model::Block* const> blocks, std::size_t at, Length width) {
  return at + 1 < blocks.size() && goes_in_columns(setting, blocks, at + 1, width);
}

bool goes_in_columns(Setting& setting, std::span<const model::Block* const> blocks, std::size_t at, Length width) {
  const auto& what = blocks[at]->what;
  if (const auto* heading = std::get_if<model::Heading>(&what))
    return (heading->level >= 3 || heading->anchor.empty()) && next_does(setting, blocks, at, width);
  if (const auto* paragraph = std::get_if<model::Paragraph>(&what)) {
    if (paragraph->role == model::Paragraph::Role::lead) return false;
    return !announces(*paragraph) || next_does(setting, blocks, at, width);
  }
  if (const auto* table = std::get_if<model::Table>(&what)) return is_narrow(setting, *table, width);
  if (const auto* entry = std::get_if<model::Entry>(&what)) return entry->rank == model::Entry::Rank::small;
  return std::holds_alternative<model::List>(what);
}

}  // namespace

void set_in_columns(Setting& setting, std::span<const model::Block* const> blocks, std::size_t at, Target& target) {
  if (!goes_in_columns(setting, blocks, at, target.width)) return set_block(setting, *blocks[at], target);
  const Length whole = target.width;
  const std::size_t first = target.galley.strips.size();
  target.width = column_width(whole, kColumns);
  Look prose = look::entry_body();
  std::swap(target.prose, prose);
  set_block(setting, *blocks[at], target);
  std::swap(target.prose, prose);
  target.width = whole;
  for (std::size_t i = first; i < target.galley.strips.size(); ++i) target.galley.strips[i].columns = kColumns;
}

}  // namespace benchleaf::page
