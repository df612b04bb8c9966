// In: cells. Out: the way in by number.
#include <algorithm>
#include <utility>

#include "compose/charts/panels.h"
#include "compose/entry_maker.h"
#include "compose/line.h"
#include "derive/natural_order.h"

namespace benchleaf::compose {

namespace {

constexpr std::size_t kRuleEvery = 5;

model::TableRow number_row(const Desk& desk, const model::Cell& cell, bool joins_next) {
  model::Runs size;
  if (const model::Fact* across = desk.fact(cell, "size.diameter")) size.push_back(figure_run(*across));
  if (const model::Fact* high = desk.fact(cell, "size.height")) {
    size.push_back(model::text_run("\u00A0\u00D7\u00A0"));
    size.push_back(figure_run(*high));
  }
  mark_doubt(desk, size, cell, "size.height");
  const bool high = cell.drain == model::Drain::high;
  return {{::benchleaf::compose::cell({model::text_run(cell_key(cell), model::Style::number)}),
           ::benchleaf::compose::cell(std::move(size)),
           ::benchleaf::compose::cell({model::text_run(kind_words(cell), high ? model::Style::bold : model::Style::plain)})},
          {},
          joins_next};
}

}  // namespace

std::string kind_words(const model::Cell& cell) {
  if (cell.system == "silver-oxide")
    return cell.drain == model::Drain::low || cell.drain == model::Drain::high ? word_of(cell.drain) : "silver";
  if (cell.system == "alkaline") return "alkaline";
  if (cell.system == "mercuric-oxide") return "mercury, none made";
  return plain_words(cell.system);
}

model::Run figure_run(const model::Fact& fact, model::Style style) {
  model::Run run = model::fact_run(fact, style);
  if (fact.unit.empty() || !run.text.ends_with(fact.unit)) return run;
  run.text.resize(run.text.size() - fact.unit.size());
  for (const std::string space : {"\u2009", "\u202F", "\u00A0", " "}) {
    if (run.text.ends_with(space)) run.text.resize(run.text.size() - space.size());
  }
  return run;
}

void mark_doubt(const Desk& desk, model::Runs& runs, const model::Record& record, const char* path) {
  const Sign sign = desk.sign(record, path);
  if (sign.trust != model::Trust::memory) return;
  for (model::Run& run : Line(desk).say("\u2009").sign(sign).take()) runs.push_back(std::move(run));
}

PanelBlocks cell_numbers(const Desk& desk, const Wanted& wanted) {
  std::vector<const model::Cell*> cells;
  for (const model::Cell* cell : wanted_records(desk, wanted, desk.records.cells)) {
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

}  // namespace benchleaf::compose
