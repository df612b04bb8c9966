#pragma once

#include <string>

#include "html/plan.h"

namespace benchleaf::html {

/// What the search of the pages looks into, as one string in a plain script, since a page opened from a disk may read no
/// other file. First line: by how much a cell can have swollen, in mm. Then a line for each entry: record, address from the
/// root of the site, group, title, summary, names parted by `|`, size, keys as `WEIGHT:key|key;WEIGHT:key`; parted by tabs.
/// Entries that have no page in the book are left out.
std::string search_data(const model::SearchList& list, const Plan& plan);

}  // namespace benchleaf::html
