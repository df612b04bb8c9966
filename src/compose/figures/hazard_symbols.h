#pragma once

#include <string_view>
#include <vector>

#include "model/drawing.h"

namespace benchleaf::compose {

/// The symbol within a diamond by its code in the table ghs-pictograms, GHS01 to GHS09: shapes round (0, 0), half the diagonal
/// of the diamond being 10. Empty for another code.
std::vector<model::PathShape> hazard_symbol(std::string_view code);

}  // namespace benchleaf::compose
