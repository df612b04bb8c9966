#pragma once

#include "command/manifest.h"
#include "command/workbench.h"

namespace benchleaf::command {

/// What the pages ask, by names below the bound folder: the program as the build of the target bench-web leaves it, `program.js`,
/// beside this one, else in `../share/benchleaf`; and what it looks into, since a page opened from a disk may read no other file.
/// An error where one is missing.
Files page_scripts(Workbench& bench);

}  // namespace benchleaf::command
