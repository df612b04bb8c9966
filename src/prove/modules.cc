// Rules about the cells of a module: the wiring says how many, and what they give together is the supply.

#include <string>

#include "base/number.h"
#include "prove/published_checks.h"
#include "prove/shared.h"

namespace benchleaf::prove {
namespace {

using base::Unit;
using model::Module;
using report::Rule;

/// A cell that is nearly empty or fresh lies by this much beside its nominal voltage.
constexpr double kLowest = 0.6, kHighest = 1.2;

/// How many nominal voltages stand one behind the other.
int in_series(const Module& module) { return module.wiring == model::Wiring::series ? module.cell_count : 1; }

void check_supply(const Proof& proof, const Module& module) {
  const auto supply = module.supply && module.usable("supply") ? module.supply->in(Unit::volt) : std::nullopt;
  if (!supply || !module.supply->has_value() || module.wiring == model::Wiring::not_known) return;
  for (std::size_t i = 0; i < module.cells.size(); ++i) {
    const auto* record = record_of(proof, model::Kind::cell, module.cells[i]);
    if (record == nullptr) continue;
    const auto& cell = proof.base.cells.at(record->id);
    const auto nominal = stated_value(cell, "nominal", cell.nominal, Unit::volt);
    if (!nominal) continue;
    const double together = base::tidy(*nominal * in_series(module));
    const bool within = together >= base::tidy(supply->low) && together <= base::tidy(supply->high);
    const bool near = supply->low >= together * kLowest && supply->high <= together * kHighest;
    if (within && near) continue;
    proof.findings
        .add(Rule::module_supply, module.span_of("supply"),
             "found a supply of " + shown(module.supply) + ", but its cells give " + shown(together, Unit::volt),
             "one of supply, wiring, cell-count and cells is wrong")
        .notes.push_back({cell.span_of("nominal"), "the voltage of " + cell.reference()});
    return;
  }
}

}  // namespace

void check_module_cells(const Proof& proof) {
  for (const auto& [id, module] : proof.base.modules) {
    if (!module.usable("wiring") || !module.usable("cell-count")) continue;
    const bool one = module.wiring == model::Wiring::single;
    const bool several = module.wiring == model::Wiring::series || module.wiring == model::Wiring::parallel;
    if ((!one || module.cell_count == 1) && (!several || module.cell_count > 1)) continue;
    proof.findings
        .add(Rule::module_cells, module.span_of("cell-count"),
             "found " + std::to_string(module.cell_count) + " with the wiring " + word_of(module.wiring),
             "correct one of the two")
        .notes.push_back({module.span_of("wiring"), "the wiring"});
  }
}

void check_module_supply(const Proof& proof) {
  for (const auto& [id, module] : proof.base.modules) {
    if (module.usable("cells") && module.usable("wiring") && module.usable("cell-count")) check_supply(proof, module);
  }
}

}  // namespace benchleaf::prove
