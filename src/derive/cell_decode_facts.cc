// In: the designation of each cell. Out: what cell-decode makes of it, a fact an output. A designation that the calculator
// refuses gives none; the rule about designations says why.

#include <utility>

#include "bench/calculator.h"
#include "derive/fact_of_output.h"
#include "derive/makers.h"

namespace benchleaf::derive {
void make_cell_decode_facts(Making& making) {
  for (const auto& [id, cell] : making.base.cells) {
    const model::Fact* designation = making.facts.find(cell.reference() + "#designation");
    if (designation == nullptr) continue;
    const bench::Inputs inputs = {{"designation", {designation->printed, designation->trust, designation->id}}};
    bench::Result result = bench::reckon("cell-decode", inputs, {making.tables, making.facts});
    for (auto& output : result.outputs) making.facts.add(fact_of_output(std::move(output), cell.reference(), result.calculator));
  }
}

}  // namespace benchleaf::derive
