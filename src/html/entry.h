#pragma once

#include <vector>

#include "html/markup.h"
#include "html/setting.h"
#include "model/book.h"

namespace benchleaf::html {

/// The content of an entry's own page, from its key on.
Markup set_entry_page(const model::Entry& entry, Setting& setting);
/// A short entry in full inside a chapter; its key leads to its own page.
Markup set_small_entry(const model::Entry& entry, Setting& setting);
/// Lines of key, second name and aliases, each leading to the entry's page.
Markup set_register(const std::vector<const model::Entry*>& entries, Setting& setting);

}  // namespace benchleaf::html
