#pragma once

#include <string>
#include <vector>

#include "model/record.h"

namespace benchleaf::query {

/// The sentences by which a record says what it is about, the one that sums it up first; each is searched and may be shown.
std::vector<std::string> sentences_of(const model::Record& record);

/// The sentence that sums it up, or a list of its uses; empty where there is none.
std::string summary_of(const model::Record& record);

}  // namespace benchleaf::query
