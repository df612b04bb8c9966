#pragma once

#include <optional>
#include <vector>

#include "compose/desk.h"
#include "compose/verdict_table.h"

namespace benchleaf::compose {

/// What comes of two liquids, or of a liquid and a residue: the gravest of all that bench/mixing.h knows of them, where
/// `with care` is a swab, or one after the other with a rinse between. Nothing where nothing is known.
std::optional<model::Verdict> meeting_verdict(const Desk& desk, const model::Record& one, const model::Record& other);
/// The meetings that a liquid or a residue states, then what is known of it and each other liquid and residue, each pair once.
std::vector<VerdictRow> meeting_rows(const Desk& desk, const model::Record& record);

}  // namespace benchleaf::compose
