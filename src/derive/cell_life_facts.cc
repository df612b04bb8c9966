// In: each cell that states a charge, the draw of a plain watch from the bench rules. Out: how long it lasts there, a fact a
// cell.
#include <utility>

#include "bench/calculator.h"
#include "derive/fact_of_output.h"
#include "derive/makers.h"
#include "standards/table_view.h"

namespace benchleaf::derive {

void make_cell_life_facts(Making& making) {
  constexpr const char* kRule = "plain-draw";
  const model::PublishedTable::Row* rule = standards::row_of(making.tables, "bench-rules", kRule);
  if (rule == nullptr) return;
  const bench::Given draw{standards::cell_text(*rule, "value"), rule->trust,
                          "table/bench-rules#" + std::string(kRule) + ".value"};
  for (const auto& [id, cell] : making.base.cells) {
    if (cell.status == model::CellStatus::withdrawn || making.facts.find(cell.reference() + "#capacity") == nullptr) continue;
    const bench::Inputs inputs = {{"cell", {id, model::Trust::given, {}}}, {"mean", draw}};
    bench::Result result = bench::reckon("cell-life", inputs, {making.tables, making.facts});
    for (auto& output : result.outputs) {
      if (output.name == "life") making.facts.add(fact_of_output(std::move(output), cell.reference(), result.calculator));
    }
  }
}

}  // namespace benchleaf::derive
