#pragma once

#include <memory>

#include "model/drawing.h"

namespace benchleaf::ticket {

/// WARNING with its triangle on orange, as high as three lines of a table, in millimetres.
std::shared_ptr<const model::Drawing> warning_panel();

}  // namespace benchleaf::ticket
