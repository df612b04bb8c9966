#pragma once

#include <memory>

#include "model/drawing.h"

namespace benchleaf::compose {

/// A cell in its well with the back off: strap on the can, minus leaf under the small face, insulator beside. To no scale, with
/// the words of the bench; most watches have it so.
std::shared_ptr<const model::Drawing> cell_in_watch();

}  // namespace benchleaf::compose
