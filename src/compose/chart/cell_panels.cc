// In: cells and their sizes. Out: the two ways in of a chart of cells: by number, by size.
#include <algorithm>
#include <utility>

#include "compose/chart/panels.h"
#include "compose/entry_maker.h"
#include "compose/line.h"
#include "compose/size_rows.h"
#include "derive/natural_order.h"

namespace benchleaf::compose {

namespace {

constexpr std::size_t kRuleEvery = 5;

/// What parts one system from the next in the few letters of a column; of lithium its voltage matters.
std::string kind_words(const model::Cell& cell) {
  if (cell.system == "silver-oxide") return cell.drain == "low" || cell.drain == "high" ? cell.drain : "silver";
  if (cell.system == "alkaline") return "alkaline";
  if (cell.system == "mercuric-oxide") return "mercury, none made";
  return plain_words(cell.system);
}

/// A sign only where the value is recalled: a mark on every line marks nothing.
void mark_doubt(const Desk& desk, Line& line, const model::Cell& cell, const char* path) {
  const Sign sign = desk.sign(cell, path);
  if (sign.trust == model::Trust::memory) line.say("\u2009").sign(sign);
}

model::TableRow number_row(const Desk& desk, const model::Cell& cell, bool joins_next) {
  Line size(desk);
  size.fact(cell, "size.diameter").fact(cell, "size.height", " \u00D7 ");
  mark_doubt(desk, size, cell, "size.height");
  const bool high = cell.drain == "high";
  return {{::benchleaf::compose::cell({model::text_run(cell_key(cell), model::Style::number)}),
           ::benchleaf::compose::cell(size.take()),
           ::benchleaf::compose::cell({model::text_run(kind_words(cell), high ? model::Style::bold : model::Style::plain)})},
          {},
          joins_next};
}

bool is_wanted(const Wanted& wanted, const model::Cell& cell) {
  const auto& list = wanted.records;
  return list.empty() || std::find(list.begin(), list.end(), cell.reference()) != list.end() ||
         std::find(list.begin(), list.end(), cell.id) != list.end();
}

/// `5.4  309 low  393 high  AG5 alkaline`
void say_size(const Desk& desk, Line& line, const derive::SizeFamily& family, const Wanted& wanted) {
  bool first = true;
  for (const std::string& reference : family.cells) {
    const model::Cell* cell = desk.cell(reference);
    if (cell == nullptr || !is_wanted(wanted, *cell)) continue;
    if (first) {
      line.fact(*cell, "size.height", {}, model::Style::look_up);
      mark_doubt(desk, line, *cell, "size.height");
    }
    line.say("\u2002 ").say(cell_key(*cell), model::Style::number);
    if (is_lithium(*cell)) {
      line.fact(*cell, "nominal", "\u00A0");
    } else {
      line.say("\u00A0" + kind_words(*cell));
    }
    first = false;
  }
}

}  // namespace

PanelBlocks cell_numbers(const Desk& desk, const Wanted& wanted) {
  std::vector<const model::Cell*> cells;
  for (const model::Cell* cell : wanted_records(desk, wanted, model::Kind::cell, desk.records.cells)) {
    if (!cell->trade_number.empty() || !wanted.records.empty()) cells.push_back(cell);
  }
  std::sort(cells.begin(), cells.end(),
            [](const model::Cell* a, const model::Cell* b) { return derive::natural_less(cell_key(*a), cell_key(*b)); });
  model::Table table;
  table.columns = {column("number", model::Column::Align::left, true), column("size"), column("drain")};
  for (std::size_t i = 0; i < cells.size(); ++i) {
    table.rows.push_back(number_row(desk, *cells[i], (i + 1) % kRuleEvery != 0));
  }
  if (table.rows.empty()) return {};
  return {std::move(table)};
}

PanelBlocks cell_sizes(const Desk& desk, const Wanted& wanted) {
  model::Table table;
  table.columns = {column("across", model::Column::Align::left, true), column("height, number, drain")};
  table.rows = size_rows(desk, model::Style::look_up, [&wanted](const Desk& own, Line& line, const derive::SizeFamily& family) {
    say_size(own, line, family, wanted);
  });
  if (table.rows.empty()) return {};
  return {std::move(table)};
}

}  // namespace benchleaf::compose
