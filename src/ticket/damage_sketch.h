#pragma once

#include <memory>

#include "model/drawing.h"

namespace benchleaf::ticket {

/// A watch from the front and from the back in outline, to mark damage on. Millimetres, to no scale.
std::shared_ptr<const model::Drawing> damage_sketch();

}  // namespace benchleaf::ticket
