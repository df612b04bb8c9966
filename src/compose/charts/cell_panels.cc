// In: cells. Out: the way in by number.
#include <algorithm>
#include <utility>

#include "compose/charts/panels.h"
#include "compose/entry_maker.h"
#include "compose/line.h"
#include "derive/natural_order.h"

namespace benchleaf::compose {

namespace {

using model::Style;

constexpr double kGapMm = 1.0;

/// A number under which a cell is sold, and the cell.
struct Sold {
  std::string number;
  const model::Cell* cell;
};

/// The drain of a silver cell; of another system the short designation, whose first letters tell it.
std::string drain_or_name(const model::Cell& cell) {
  if (cell.system == "silver-oxide" || cell.short_form.empty()) return kind_words(cell);
  return cell.short_form;
}

model::TableRow number_row(const Desk& desk, const Sold& sold) {
  const model::Cell& cell = *sold.cell;
  model::Runs size;
  if (const model::Fact* across = desk.fact(cell, "size.diameter")) size.push_back(figure_run(*across, Style::one_line));
  if (const model::Fact* high = desk.fact(cell, "size.height")) {
    size.push_back(model::text_run("\u00A0\u00D7\u00A0", Style::one_line));
    size.push_back(figure_run(*high, Style::one_line));
  }
  mark_doubt(desk, size, cell, "size.height");
  const Style weight = cell.drain == model::Drain::high ? Style::bold | Style::one_line : Style::one_line;
  return {{::benchleaf::compose::cell({model::text_run(sold.number, Style::number)}), ::benchleaf::compose::cell(std::move(size)),
           ::benchleaf::compose::cell({model::text_run(drain_or_name(cell), weight)})},
          {}};
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
  std::vector<Sold> sold;
  for (const model::Cell* cell : wanted_records(desk, wanted, desk.records.cells)) {
    for (const std::string* number : {&cell->trade_number, &cell->consumer_number}) {
      if (!number->empty()) sold.push_back({*number, cell});
    }
  }
  std::sort(sold.begin(), sold.end(), [](const Sold& a, const Sold& b) { return derive::natural_less(a.number, b.number); });
  model::Table table;
  table.gap_mm = kGapMm;
  table.columns = {column("number", model::Column::Align::left, true), column("size"), column("drain")};
  for (const Sold& one : sold) table.rows.push_back(number_row(desk, one));
  if (table.rows.empty()) return {};
  return {std::move(table)};
}

}  // namespace benchleaf::compose
