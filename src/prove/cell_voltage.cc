// Rules about a cell's system and its voltage, against the published table of systems.

#include <string>

#include "base/number.h"
#include "base/quantity.h"
#include "prove/checks.h"

namespace benchleaf::prove {
namespace {

using report::Rule;

std::string volts(double value) {
  return base::to_terminal(base::printed(base::shortest_text(base::tidy(value)), base::Unit::volt));
}

}  // namespace

void check_voltage(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    const model::CellSystem* system = proof.tables.cell_system_by_id(cell.system);
    const bool readable = cell.usable("nominal") && cell.usable("system") && cell.usable("cells-in-series");
    if (system == nullptr || !readable || !cell.nominal || !cell.nominal->has_value()) continue;
    const auto stated = cell.nominal->value_in(base::Unit::volt);
    const auto lowest = system->lowest.value_in(base::Unit::volt);
    const auto highest = system->highest.value_in(base::Unit::volt);
    if (!stated || !lowest || !highest) continue;
    const double low = base::tidy(*lowest * cell.cells_in_series);
    const double high = base::tidy(*highest * cell.cells_in_series);
    const double found = base::tidy(*stated);
    if (found >= low && found <= high) continue;
    const std::string bound = low == high ? volts(low) : volts(low) + " to " + volts(high);
    proof.findings.add(
        Rule::cell_voltage, cell.span_of("nominal"),
        "found a nominal voltage of " + base::terminal(*cell.nominal) + ", expected " + bound + " for " + system->name,
        "one of system, nominal and cells-in-series is wrong");
  }
}

void check_withdrawn(const Proof& proof) {
  for (const auto& [id, cell] : proof.base.cells) {
    const model::CellSystem* system = proof.tables.cell_system_by_id(cell.system);
    if (system == nullptr || !system->withdrawn || cell.status == model::CellStatus::withdrawn || !cell.usable("status") ||
        !cell.usable("system"))
      continue;
    proof.findings.add(Rule::cell_withdrawn, cell.span_of("status"),
                       "found status " + word_of(cell.status) + ", but the system " + system->name + " is withdrawn",
                       "write status: withdrawn");
  }
}

}  // namespace benchleaf::prove
