#pragma once

#include "html/markup.h"
#include "html/setting.h"

namespace benchleaf::html {

/// Chapters with their sections and entries in book order, each a link.
Markup set_contents(Setting& setting);

}  // namespace benchleaf::html
