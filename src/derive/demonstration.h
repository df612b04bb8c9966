#pragma once

#include "model/record.h"

namespace benchleaf::derive {

/// Whether a record belongs to the demonstration, the only place for invented values: watches, stock lists, and records
/// whose id is `demonstration` or begins with `demo-`.
bool is_demonstration(const model::Record& record);

}  // namespace benchleaf::derive
