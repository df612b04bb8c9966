#pragma once

#include "html/markup.h"
#include "html/setting.h"
#include "model/book.h"

namespace benchleaf::html {

/// A safety message: word panel, hazard and harm in bold, then what to do, then two signs at most with their titles.
Markup set_message(const model::Message& message, Setting& setting);

}  // namespace benchleaf::html
