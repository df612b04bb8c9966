// In: the designation of each cell. Out: what cell-decode makes of it, a fact an output. A designation that the calculator
// refuses gives none; the rule about designations says why.

#include <string>
#include <utility>

#include "bench/calculator.h"
#include "derive/makers.h"

namespace benchleaf::derive {
namespace {

model::Fact fact_of(bench::Output output, const std::string& record, const std::string& calculator) {
  model::Fact fact;
  fact.id = record + "#" + calculator + "." + output.name;
  fact.value = output.value;
  fact.low = output.low;
  fact.high = output.high;
  fact.unit = std::move(output.unit);
  fact.printed = std::move(output.printed);
  fact.trust = output.trust;
  fact.derived = true;
  fact.inputs = std::move(output.inputs);
  fact.source = std::move(output.formula);
  return fact;
}

}  // namespace

void make_cell_decode_facts(Making& making) {
  for (const auto& [id, cell] : making.base.cells) {
    const model::Fact* designation = making.facts.find(cell.reference() + "#designation");
    if (designation == nullptr) continue;
    const bench::Inputs inputs = {{"designation", {designation->printed, designation->trust, designation->id}}};
    bench::Result result = bench::reckon("cell-decode", inputs, {making.tables, making.facts});
    for (auto& output : result.outputs) making.facts.add(fact_of(std::move(output), cell.reference(), result.calculator));
  }
}

}  // namespace benchleaf::derive
