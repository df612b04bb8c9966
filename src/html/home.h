#pragma once

#include "html/markup.h"
#include "html/setting.h"

namespace benchleaf::html {

/// The home page: what the book is, a door for each chapter by the thing in hand, the legend of the trust signs.
Markup set_home(Setting& setting);

/// The page about the book: title, edition, and the notes of its cover.
Markup set_about(Setting& setting);

}  // namespace benchleaf::html
