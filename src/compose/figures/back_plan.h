#pragma once

#include "compose/figures/back_drawing.h"

namespace benchleaf::compose {

/// Adds the back from above to the left part of a drawing, with the tool or its places in the accent. Millimetres, to no
/// scale; nothing for a back that is none of the four.
void add_back_plan(model::Drawing& drawing, const BackPlace& place);

}  // namespace benchleaf::compose
