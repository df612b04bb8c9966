#pragma once

#include <memory>

#include "model/drawing.h"

namespace benchleaf::compose {

// Small pictures of what is measured on a watch, drawn by us in section. No measures are read off them.

/// Callipers on the boss that a gasket is drawn over.
std::shared_ptr<const model::Drawing> seat_picture();
/// A groove with its depth and its width.
std::shared_ptr<const model::Drawing> groove_picture();
/// A crystal seen from above with its width, and from the side with its thickness.
std::shared_ptr<const model::Drawing> crystal_picture();
/// A nail drawn across a scratch.
std::shared_ptr<const model::Drawing> scratch_picture();
/// The width between the lugs.
std::shared_ptr<const model::Drawing> lugs_picture();
/// A cell with its width and its height.
std::shared_ptr<const model::Drawing> cell_picture();

}  // namespace benchleaf::compose
