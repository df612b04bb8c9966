#pragma once

#include <string_view>

#include "model/records/cell.h"
#include "prove/checks.h"

namespace benchleaf::prove {

/// What cell-decode made of the cell's designation: the fact of one output, or nullptr.
const model::Fact* decoded_fact(const Proof& proof, const model::Cell& cell, std::string_view output);

/// Whether the record or the designation says that several cells stand in one sleeve: sizes are then not those of the code.
bool is_stack(const Proof& proof, const model::Cell& cell);

/// The disagreement that the record itself states about a field or what the field is part of, or nullptr.
const model::Conflict* conflict_about(const model::Cell& cell, std::string_view field);

}  // namespace benchleaf::prove
