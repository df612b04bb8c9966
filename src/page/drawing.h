#pragma once

#include <vector>

#include "model/drawing.h"
#include "page/setting.h"

namespace benchleaf::page {

/// The shapes of a drawing as items from its top left corner, `scale` times as large. All carry `tag`.
std::vector<Item> place_drawing(Setting& setting, const model::Drawing& drawing, double scale, TagId tag);

/// A path in page lengths; `scale` as above.
PathItem place_path(const model::PathShape& shape, double scale);

/// A straight rule from a point to the right, its middle on `y`.
Item rule(Length left, Length y, Length width, double thickness_pt, Color color);
/// A filled rectangle.
Item ground(Box box, Color color);

}  // namespace benchleaf::page
