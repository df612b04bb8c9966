#pragma once

#include "html/markup.h"
#include "html/setting.h"
#include "model/book.h"

namespace benchleaf::html {

/// A table with caption, scopes and aligned figures. One with a column of prose folds on a narrow screen, another scrolls
/// in a frame of its own that the keyboard reaches.
Markup set_table(const model::Table& table, Setting& setting);

}  // namespace benchleaf::html
