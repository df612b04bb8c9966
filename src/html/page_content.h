#pragma once

#include "html/setting.h"

namespace benchleaf::html {

/// What stands on a page between its bars.
Markup set_page(Setting& setting);

}  // namespace benchleaf::html
