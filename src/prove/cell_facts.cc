// In: a cell. Out: what was derived from its designation, and what its record says about disagreements.

#include "prove/cell_facts.h"

#include <string>

namespace benchleaf::prove {

const model::Fact* decoded_fact(const Proof& proof, const model::Cell& cell, std::string_view output) {
  return proof.derived.facts.find(cell.reference() + "#cell-decode." + std::string(output));
}

bool is_stack(const Proof& proof, const model::Cell& cell) {
  return cell.cells_in_series > 1 || decoded_fact(proof, cell, "cells") != nullptr;
}

const model::Conflict* conflict_about(const model::Cell& cell, std::string_view field) {
  for (const auto& conflict : cell.conflicts) {
    const bool covers = field.substr(0, conflict.field.size()) == conflict.field &&
                        (field.size() == conflict.field.size() || field[conflict.field.size()] == '.');
    if (covers) return &conflict;
  }
  return nullptr;
}

}  // namespace benchleaf::prove
