// In: gaskets, modules, the table of marks. Out: panels to measure by: nest, scales, limits.
#include <algorithm>
#include <cmath>
#include <utility>

#include "compose/charts/panels.h"
#include "compose/entry_maker.h"
#include "compose/figures/measure_drawings.h"
#include "compose/line.h"

namespace benchleaf::compose {

namespace {

/// Circles of one nest lie so far apart that a figure stands between them and touches neither, in millimetres of diameter.
constexpr int kNestStep = 12;
/// 14 pt, a look-up key.
constexpr double kNestKeyMm = 14 * 25.4 / 72;

/// Whole millimetres of inside diameter that the series span.
std::pair<int, int> span_of(const std::vector<const model::Gasket*>& series) {
  int least = 0;
  int most = 0;
  for (const model::Gasket* gasket : series) {
    if (!gasket->inside.from || !gasket->inside.to) continue;
    const auto from = gasket->inside.from->value_in(base::Unit::millimetre);
    const auto to = gasket->inside.to->value_in(base::Unit::millimetre);
    if (!from || !to) continue;
    least = least == 0 ? static_cast<int>(std::ceil(*from)) : std::min(least, static_cast<int>(std::ceil(*from)));
    most = std::max(most, static_cast<int>(std::floor(*to)));
  }
  return {least, most};
}

std::string cell_words(const model::PublishedTable::Row& row, const char* name) {
  const auto found = row.cells.find(name);
  return found == row.cells.end() ? std::string() : found->second;
}

/// Classes of jewellery do not hold for watch cases.
std::string rule_of(const model::PublishedTable::Row& row) {
  const bool jewellery = cell_words(row, "for") == "jewellery";
  return cell_words(row, "rule") + (jewellery ? ", jewellery, no cases" : "");
}

}  // namespace

PanelBlocks gasket_nest(const Desk& desk, const Wanted& wanted) {
  const auto [least, most] = span_of(wanted_records(desk, wanted, desk.records.gaskets));
  if (least <= 0) return {};
  model::Pictures row;
  // In the order of the outermost circles, so that those inside them go up as well.
  for (int outermost = std::max(least, most - kNestStep + 1); outermost <= most; ++outermost) {
    std::vector<int> diameters;
    for (int diameter = outermost; diameter >= least; diameter -= kNestStep) diameters.insert(diameters.begin(), diameter);
    row.pictures.push_back({nest(diameters, kNestKeyMm), {}});
  }
  return {std::move(row)};
}

PanelBlocks twin_scale(const Desk&, const Wanted&) {
  model::Pictures row;
  row.pictures.push_back({twin_scale_drawing(), {}});
  return {std::move(row)};
}

PanelBlocks consumption_limits(const Desk& desk, const Wanted& wanted) {
  model::Table table;
  table.columns = {column({}, model::Column::Align::left, true), column({})};
  for (const model::Module* module : wanted_records(desk, wanted, desk.records.modules)) {
    if (module->healthy.empty()) continue;
    model::Runs words{model::text_run(module->healthy)};
    mark_doubt(desk, words, *module, "loads.0.current");
    table.rows.push_back({{cell({model::text_run(module->title, model::Style::look_up)}), cell(std::move(words))}, {}});
  }
  if (table.rows.empty()) return {};
  return {std::move(table)};
}

PanelBlocks plating_marks(const Desk& desk, const Wanted&) {
  const model::PublishedTable* marks = desk.tables.find("plating-marks");
  if (marks == nullptr) return {};
  model::Table table;
  table.columns = {column("mark", model::Column::Align::left, true), column("least layer"), column("by")};
  for (const model::PublishedTable::Row& row : marks->rows) {
    const std::string id = "table/plating-marks#" + row.key;
    const model::Fact* layer = desk.derived.facts.find(id + ".layer");
    model::Runs says{layer != nullptr && layer->value ? model::fact_run(*layer, model::Style::bold)
                                                      : model::text_run("the figure beside it, in micrometres")};
    if (row.trust == model::Trust::memory) {
      for (model::Run& run : Line(desk).say("\u2009").sign({row.trust, false}).take()) says.push_back(std::move(run));
    }
    table.rows.push_back(
        {{cell({model::text_run(row.key, model::Style::look_up)}), cell(std::move(says)), cell(rule_of(row))}, {}});
  }
  if (table.rows.empty()) return {};
  return {std::move(table)};
}

}  // namespace benchleaf::compose
