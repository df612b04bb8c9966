#pragma once

#include <optional>
#include <vector>

#include "model/knowledge_base.h"

namespace benchleaf::compose {

/// Meetings that a liquid or a residue states; none for a record of another kind.
const std::vector<model::Meeting>& meetings_of(const model::Record& record);

/// The gravest of what the two records state about each other, by name or by a substance that the other holds; nothing where
/// neither says a word.
std::optional<model::Verdict> meeting_verdict(const model::Record& one, const model::Record& other);

}  // namespace benchleaf::compose
