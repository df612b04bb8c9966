#pragma once

#include <memory>
#include <string>
#include <vector>

#include "model/drawing.h"
#include "model/tables.h"

namespace benchleaf::compose {

/// Pictograms of the table ghs-pictograms by code, each in its red frame of the least side that the table bench-rules gives; side
/// by side, or in a zigzag where `height_mm` has room for one. Codes of no pictogram are left out; nothing where none is left.
/// The symbols are drawn after what the table says they show.
std::shared_ptr<const model::Drawing> hazard_diamonds(const model::Tables& tables, const std::vector<std::string>& codes,
                                                      double height_mm);

}  // namespace benchleaf::compose
