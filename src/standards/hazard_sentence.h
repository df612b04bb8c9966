#pragma once

#include <string>

#include "model/tables.h"

namespace benchleaf::standards {

/// The sentence of a hazard statement by the table hazard-statements, without its code; the code where it is not listed.
std::string hazard_sentence(const model::Tables& tables, const std::string& code);

}  // namespace benchleaf::standards
