#pragma once

#include <memory>
#include <string>
#include <vector>

#include "model/drawing.h"
#include "model/tables.h"

namespace benchleaf::compose {

/// Side of a diamond in millimetres: a square centimetre, the least that Regulation (EC) No 1272/2008, annex I, 1.2.1, lets a
/// label have.
inline constexpr double kDiamondMm = 10;

/// Pictograms of the table ghs-pictograms by code, each in its red frame; side by side, or in a zigzag where `height_mm` has
/// room for one. Codes of no pictogram are left out; nothing where none is left. The symbols are drawn after what the table
/// says they show.
std::shared_ptr<const model::Drawing> hazard_diamonds(const model::Tables& tables, const std::vector<std::string>& codes,
                                                      double height_mm);

}  // namespace benchleaf::compose
