#pragma once

#include <optional>

#include "compose/desk.h"
#include "model/book.h"
#include "model/records/page.h"

namespace benchleaf::compose {

/// What a block `show: reckoned` of a page asks for: a row a question, a column an output, the sign of the weakest at the
/// end. Nothing where the block asks for something else or the calculator refuses a row.
std::optional<model::Table> reckoned_table(const Desk& desk, const model::Page& page, const model::DerivedRequest& request);

}  // namespace benchleaf::compose
