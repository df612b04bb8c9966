#pragma once

#include <string>

#include "command/workbench.h"

namespace benchleaf::command {

/// Name of the script below the bound folder.
inline constexpr const char* kPageDataName = "html/assets/bench-data.js";

/// What the calculators of the page look up: tables and figures of records in their line formats (standards/table_lines.h,
/// bench/figure_lines.h) as one string in a plain script, since a page opened from a disk may read no other file.
std::string page_data(const Workbench& bench);

}  // namespace benchleaf::command
