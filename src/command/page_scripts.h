#pragma once

#include "command/manifest.h"
#include "command/workbench.h"

namespace benchleaf::command {

/// The scripts of the pages that reckon and plan, by their names below the bound folder: the calculators and the ticket's form as
/// the build of the target bench-web leaves them, `bench.js` and `ticket.js`, beside the program, else in `../share/benchleaf`;
/// and what they look into, since a page opened from a disk may read no other file. An error where one is missing.
Files page_scripts(Workbench& bench);

}  // namespace benchleaf::command
