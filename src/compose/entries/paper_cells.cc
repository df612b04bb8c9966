// In: the cells and their sizes. Out: what paper says of them: a table by number, a block for each size.
#include <algorithm>
#include <utility>

#include "compose/entries/paper_lists.h"
#include "compose/entry_maker.h"
#include "compose/figures/cell_drawing.h"
#include "compose/index_order.h"

namespace benchleaf::compose {

namespace {

using model::Style;
using Align = model::Column::Align;

/// `7.9 × 5.4 mm`, with signs where the measures were not published.
model::Runs size_runs(const Desk& desk, const model::Cell& cell) {
  Line line(desk);
  line.fact(cell, "size.diameter", {}, Style::look_up)
      .say("\u00A0×\u00A0", Style::look_up)
      .fact(cell, "size.height", {}, Style::look_up);
  return line.sign(desk.sign(cell, "size.height")).take();
}

/// `SR754W SR48`, the short form in the lighter weight.
model::Runs designation_runs(const Desk& desk, const model::Cell& cell) {
  Line line(desk);
  line.say(cell.designation, Style::bold);
  if (!cell.short_form.empty()) line.say("  ").fact(cell, "short");
  if (!cell.consumer_number.empty() && !cell.trade_number.empty()) line.say("  ").fact(cell, "consumer-number");
  return line.take();
}

bool has_capacity(const model::Cell& cell) { return cell.capacity && cell.capacity->value && cell.capacity->value->has_value(); }

/// `80 mAh, load not stated`
model::Runs charge_runs(const Desk& desk, const model::Cell& cell) {
  Line line(desk);
  if (!has_capacity(cell)) return {};
  line.fact(cell, "capacity", {}, Style::bold).sign(desk.sign(cell, "capacity"));
  return line.fact(cell, "capacity.load", " at ").take();
}

std::string drain_word(const model::Cell& cell) {
  const bool told = cell.drain == model::Drain::low || cell.drain == model::Drain::high;
  return told ? model::word_of(cell.drain) : std::string();
}

std::vector<std::string> sources_of(const model::Cell& cell) {
  std::vector<std::string> sources;
  for (const auto& [path, basis] : cell.basis) {
    if (!basis.source.empty() && path.rfind("conflicts", 0) != 0) sources.push_back(basis.source);
  }
  return sources;
}

model::Runs use_runs(const Desk& desk, const model::Cell& cell) {
  Line line(desk);
  if (cell.status == model::CellStatus::withdrawn) line.verdict(model::Verdict::never, "no longer made", Style::bold).say(" ");
  line.say(cell.uses);
  return line.source_keys(sources_of(cell)).take();
}

model::TableRow cell_row(const Desk& desk, const model::Cell& one, model::TableCell first) {
  const bool numbered = !one.trade_number.empty() || !one.consumer_number.empty();
  Line number(desk);
  if (numbered) number.say(cell_key(one), Style::number);
  model::Runs system{model::text_run(one.system == "silver-oxide" ? "silver" : plain_words(one.system))};
  if (const std::string drain = drain_word(one); !drain.empty()) {
    system.push_back(model::text_run(", "));
    system.push_back(model::text_run(drain, drain == "high" ? Style::bold : Style::plain));
  }
  return {{std::move(first), cell(number.take()), cell(designation_runs(desk, one)), cell(std::move(system)),
           cell(charge_runs(desk, one)), cell(use_runs(desk, one))},
          one.reference(),
          true};
}

/// What goes in and is of another system stands under words that say so.
model::TableRow other_head(const Desk& desk) {
  model::TableRow row;
  row.cells.resize(6);
  row.cells[2] = cell(Line(desk).verdict(model::Verdict::with_limits, "OTHER system", Style::bold).take());
  row.joins_next = true;
  return row;
}

void add_size(const Desk& desk, const derive::SizeFamily& family, model::Table& table) {
  std::vector<const model::Cell*> cells;
  for (const std::string& reference : family.cells) {
    if (const model::Cell* one = desk.cell(reference)) cells.push_back(one);
  }
  if (cells.empty()) return;
  const std::string& leading = cells.front()->system;
  std::stable_partition(cells.begin(), cells.end(), [&leading](const model::Cell* one) { return one->system == leading; });
  bool first = true, apart = false;
  for (const model::Cell* one : cells) {
    if (one->system != leading && !apart) {
      apart = true;
      table.rows.push_back(other_head(desk));
    }
    model::TableCell size;
    if (first) size = {size_runs(desk, *one), cell_views(desk, *one), true};
    first = false;
    table.rows.push_back(cell_row(desk, *one, std::move(size)));
  }
  table.rows.back().joins_next = false;
}

}  // namespace

model::Blocks cells_by_size(const Desk& desk) {
  model::Table table;
  table.name = "cells-by-size";
  table.columns = {column("size, true to scale", Align::left, true, 42),
                   column("number", Align::left, false, 20),
                   column("designation", Align::left, false, 29),
                   column("system, drain", Align::left, false, 24),
                   column("charge", Align::left, false, 22),
                   column("for")};
  for (const derive::SizeFamily& family : desk.derived.relations.sizes()) add_size(desk, family, table);
  return {heading_block(2, "Cells by size", "group/cell"), {std::move(table)}};
}

model::Block cells_by_number(const Desk& desk) {
  std::vector<std::pair<std::string, const model::Cell*>> names;
  for (const auto& [id, one] : desk.records.cells) {
    for (const std::string* name : {&one.trade_number, &one.consumer_number, &one.designation}) {
      if (!name->empty()) names.emplace_back(*name, &one);
    }
  }
  std::stable_sort(names.begin(), names.end(), [](const auto& a, const auto& b) { return index_before(a.first, b.first); });
  model::Table table;
  table.name = "cells-by-number";
  table.columns = {column("on the can", Align::left, true), column("size"), column("system"), column("page", Align::right)};
  for (const auto& [name, one] : names) {
    Line size(desk);
    size.fact(*one, "size.diameter").fact(*one, "size.height", "\u00A0×\u00A0");
    table.rows.push_back({{cell(Line(desk).say(name).take()), cell(size.take()), cell(plain_words(one->system)),
                           cell(Line(desk).page(one->reference()).take())},
                          {}});
  }
  return {std::move(table)};
}

}  // namespace benchleaf::compose
