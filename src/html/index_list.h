#pragma once

#include "html/markup.h"
#include "html/setting.h"
#include "model/book.h"

namespace benchleaf::html {

/// The alphabetical index, parted by first letter, with a row of letters to jump to.
Markup set_index(const model::IndexList& index, Setting& setting);

}  // namespace benchleaf::html
