#pragma once

#include "html/setting.h"

namespace benchleaf::html {

/// The page for labels. A script puts the form into it; without one it tells what to type at the terminal.
Markup set_label_form(Setting& setting);

}  // namespace benchleaf::html
