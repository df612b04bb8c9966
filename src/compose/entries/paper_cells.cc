// In: the cells and their sizes. Out: what paper says of them: a table by number, a block for each size with a row for each
// cell, its verdict in a watch made for that size, and what lies next to it.
#include <algorithm>
#include <cmath>
#include <utility>

#include "base/number.h"
#include "bench/cell_candidates.h"
#include "compose/entries/paper_lists.h"
#include "compose/entry_maker.h"
#include "compose/figures/cell_drawing.h"
#include "compose/figures/years_bar.h"
#include "compose/index_order.h"
#include "compose/provenance.h"
#include "compose/verdict_table.h"
#include "query/cells.h"
#include "standards/table_view.h"

namespace benchleaf::compose {

namespace {

using model::Style;
using Align = model::Column::Align;

/// `7.9 mm × 5.4 mm`, with a sign where the measures were not published.
model::Runs size_runs(const Desk& desk, const model::Cell& cell) {
  Line line(desk);
  line.fact(cell, "size.diameter").fact(cell, "size.height", "\u00A0×\u00A0");
  return line.sign(desk.sign(cell, "size.height")).take();
}

/// What else it is called: beside a number its designation, then the short form.
model::Runs designation_runs(const Desk& desk, const model::Cell& cell) {
  Line line(desk);
  if (!cell.trade_number.empty() || !cell.consumer_number.empty()) line.say(cell.designation, Style::bold);
  if (!cell.short_form.empty()) line.say(line.empty() ? "" : "  ").fact(cell, "short");
  if (!cell.consumer_number.empty() && !cell.trade_number.empty()) line.say("  ").fact(cell, "consumer-number");
  return line.take();
}

bool has_capacity(const model::Cell& cell) { return cell.capacity && cell.capacity->value && cell.capacity->value->has_value(); }

/// `80 mAh at 50 µA`
model::Runs charge_runs(const Desk& desk, const model::Cell& cell) {
  Line line(desk);
  if (!has_capacity(cell)) return {};
  line.fact(cell, "capacity", {}, Style::bold).sign(desk.sign(cell, "capacity"));
  if (cell.capacity->load == "not stated") return line.say(", no load told").take();
  return line.fact(cell, "capacity.load", " at ").take();
}

std::string drain_word(const model::Cell& cell) {
  const bool told = cell.drain == model::Drain::low || cell.drain == model::Drain::high;
  return told ? model::word_of(cell.drain) : std::string();
}

model::Runs system_runs(const model::Cell& cell) {
  model::Runs system{model::text_run(cell.system == "silver-oxide" ? "silver" : plain_words(cell.system))};
  if (const std::string drain = drain_word(cell); !drain.empty()) {
    system.push_back(model::text_run(", "));
    system.push_back(model::text_run(drain, drain == "high" ? Style::bold : Style::plain));
  }
  return system;
}

void add_sources(const model::Cell& cell, std::vector<std::string>& sources) {
  for (const auto& [path, basis] : cell.basis) {
    if (!basis.source.empty() && path.rfind("conflicts", 0) != 0) sources.push_back(basis.source);
  }
}

/// The cells of one size: those of the system that a watch of this size was made for, then the others.
struct SizeBlock {
  std::vector<const model::Cell*> own, others;

  const std::string& system() const { return own.front()->system; }
  bool has_drain(model::Drain drain) const {
    return std::any_of(own.begin(), own.end(), [drain](const model::Cell* one) { return one->drain == drain; });
  }
};

SizeBlock block_of(const Desk& desk, const derive::SizeFamily& family) {
  SizeBlock block;
  for (const model::RecordRef& reference : family.cells) {
    if (const model::Cell* one = desk.cell(reference)) block.own.push_back(one);
  }
  if (block.own.empty()) return block;
  const auto likelier = [&desk](const model::Cell* one, const model::Cell* other) {
    return query::is_likelier(*one, *other, desk.tables);
  };
  const std::string system = (*std::min_element(block.own.begin(), block.own.end(), likelier))->system;
  const auto others = std::stable_partition(block.own.begin(), block.own.end(),
                                            [&system](const model::Cell* one) { return one->system == system; });
  block.others.assign(others, block.own.end());
  block.own.erase(others, block.own.end());
  std::stable_sort(block.own.begin(), block.own.end(), [](const model::Cell* one, const model::Cell* other) {
    return one->drain == model::Drain::low && other->drain != model::Drain::low;
  });
  return block;
}

/// What a cell of the watch's own system is for, and what the other drain does better.
model::Runs own_verdict(const Desk& desk, const model::Cell& cell, const SizeBlock& block) {
  Line line(desk);
  if (cell.status == model::CellStatus::withdrawn) return line.verdict(model::Verdict::never, "no longer made").take();
  line.verdict(model::Verdict::use, "use", Style::bold);
  const auto* row = standards::row_of(desk.tables, "drain-uses", drain_word(cell));
  if (row == nullptr) return line.say(cell.uses.empty() ? "" : " " + cell.uses).take();
  line.say(" " + (cell.uses.empty() ? standards::cell_text(*row, "for") + "." : cell.uses));
  if (block.has_drain(cell.drain == model::Drain::low ? model::Drain::high : model::Drain::low))
    line.say(" " + sentence_case(standards::cell_text(*row, "beside")) + ".");
  return line.take();
}

/// What cell-swap says of a cell of another system in a watch made for this one.
model::Runs other_verdict(const Desk& desk, const model::Cell& cell, const SizeBlock& block) {
  const auto& peers = desk.derived.relations.same_size(block.own.front()->reference());
  const auto peer = std::find_if(peers.begin(), peers.end(), [&cell](const auto& one) { return one.cell == cell.reference(); });
  const bench::Code code = peer == peers.end() ? bench::Code::none : peer->verdict;
  Line line(desk);
  line.verdict(place_verdict(code), bench::place_words(code), Style::bold).say(" ");
  if (peer == peers.end() || peer->why.empty()) return line.fact(cell, "nominal", "a cell of ").take();
  return line.say(peer->why).take();
}

model::TableCell years_cell(const Desk& desk, const model::Cell& one) {
  const model::Fact* life = desk.fact(one, "cell-life.life");
  return life == nullptr ? model::TableCell{} : model::TableCell{{}, years_bar(*life)};
}

model::TableRow cell_row(const Desk& desk, const model::Cell& one, const SizeBlock& block, bool own) {
  const bool numbered = !one.trade_number.empty() || !one.consumer_number.empty();
  Line number(desk);
  if (numbered)
    number.say(cell_key(one), own ? Style::number : Style::look_up);
  else
    number.say(one.designation, Style::look_up);
  model::Runs verdict = own ? own_verdict(desk, one, block) : other_verdict(desk, one, block);
  if (const std::string overlay = provenance_words(desk.records, one); !overlay.empty())
    verdict.push_back(model::text_run(" " + overlay + "."));
  return {{{},
           cell(number.take()),
           cell(designation_runs(desk, one)),
           cell(system_runs(one)),
           cell(charge_runs(desk, one)),
           own ? years_cell(desk, one) : model::TableCell{},
           cell(std::move(verdict))},
          one.reference(),
          true};
}

/// A row of words over all columns but the first.
model::TableRow wide_row(model::Runs words) {
  model::TableRow row;
  row.cells = {{}, cell(std::move(words))};
  row.joins_next = true;
  return row;
}

/// By how much a spacer may lift a cell.
double spacer_mm(const Desk& desk) {
  const auto* row = standards::row_of(desk.tables, "bench-rules", "cell-height-spacer");
  return row == nullptr ? 0 : standards::cell_value(*row, "value", base::Unit::millimetre).value_or(0);
}

std::string keys_of(const SizeBlock& block) {
  std::vector<std::string> keys;
  for (const model::Cell* one : block.own) keys.push_back(cell_key(*one));
  return listed(keys);
}

/// `0.5 mm lower ~ with a spacer: 362, 361   0.5 mm taller never: 384`, and the sources of the block.
model::TableRow neighbours_row(const Desk& desk, const std::vector<derive::SizeFamily>& sizes, std::size_t at,
                               const SizeBlock& block) {
  Line line(desk);
  const auto say = [&](std::size_t other, model::Verdict verdict, const char* way, const std::string& verdict_words) {
    const double apart = std::abs(sizes[other].height_mm - sizes[at].height_mm);
    const SizeBlock theirs = block_of(desk, sizes[other]);
    if (sizes[other].diameter_mm != sizes[at].diameter_mm || apart > spacer_mm(desk) + 1e-9 || theirs.own.empty() ||
        theirs.system() != block.system())
      return;
    line.say(line.empty() ? "" : "\u2003").say(base::shortest_text(base::tidy(apart)) + "\u2009mm " + way + " ");
    line.verdict(verdict, verdict_words, Style::bold).say(" " + keys_of(theirs));
  };
  if (at > 0) say(at - 1, model::Verdict::with_limits, "lower", "with a spacer or a firmer leaf:");
  if (at + 1 < sizes.size()) say(at + 1, model::Verdict::never, "taller", "never");
  std::vector<std::string> sources;
  for (const model::Cell* one : block.own) add_sources(*one, sources);
  for (const model::Cell* one : block.others) add_sources(*one, sources);
  line.say(line.empty() ? "" : "\u2003").source_keys(sources);
  return wide_row(line.take());
}

void add_size(const Desk& desk, const std::vector<derive::SizeFamily>& sizes, std::size_t at, model::Table& table) {
  const SizeBlock block = block_of(desk, sizes[at]);
  if (block.own.empty()) return;
  const std::size_t first = table.rows.size();
  for (const model::Cell* one : block.own) table.rows.push_back(cell_row(desk, *one, block, true));
  const model::Cell& leading = *block.own.front();
  table.rows[first].cells.front() = {size_runs(desk, leading), cell_views(desk, leading), true};
  if (!block.others.empty()) table.rows.push_back(wide_row(Line(desk).say("≠\u2002Same size, OTHER system", Style::bold).take()));
  for (const model::Cell* one : block.others) table.rows.push_back(cell_row(desk, *one, block, false));
  table.rows.push_back(neighbours_row(desk, sizes, at, block));
  table.rows.back().joins_next = false;
}

}  // namespace

model::Blocks cells_by_size(const Desk& desk) {
  model::Table table;
  table.name = "cells-by-size";
  table.columns = {column("true size", Align::left, true, 28),
                   column("number", Align::left, false, 18),
                   column("designation", Align::left, false, 21),
                   column("system, drain", Align::left, false, 18),
                   column("charge at load", Align::left, false, 16.5),
                   column("years at 1 to 6\u2009µA", Align::left, false, kYearsMm),
                   column("in a watch made for this size")};
  const std::vector<derive::SizeFamily>& sizes = desk.derived.relations.sizes();
  for (std::size_t at = 0; at < sizes.size(); ++at) add_size(desk, sizes, at, table);
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
  constexpr std::size_t kSideBySide = 3;
  const std::size_t height = (names.size() + kSideBySide - 1) / kSideBySide;
  model::Table table;
  table.name = "cells-by-number";
  for (std::size_t i = 0; i < kSideBySide; ++i) {
    table.columns.push_back(column("on the can", Align::left, true));
    table.columns.push_back(column("system"));
    table.columns.push_back(column("page", Align::right));
  }
  table.rows.resize(height);
  for (std::size_t i = 0; i < names.size(); ++i) {
    const auto& [name, one] = names[i];
    std::vector<model::TableCell>& cells = table.rows[i % height].cells;
    cells.push_back(cell(Line(desk).say(name).take()));
    cells.push_back(cell(system_runs(*one)));
    cells.push_back(cell(Line(desk).page(one->reference()).take()));
  }
  for (model::TableRow& row : table.rows) row.joins_next = true;
  return {std::move(table)};
}

}  // namespace benchleaf::compose
