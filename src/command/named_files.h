#pragma once

#include <string>

#include "command/workbench.h"

namespace benchleaf::command {

/// Takes a file that the user named in the place of the record of its kind and name. Gives back why it cannot be, or nothing.
std::string name_file(const std::string& file, const std::string& kind, ExtraRecords& records);

/// The findings that stand in the way of a run on named files: their own, and the errors of the content. A watch or a drawer
/// that nobody named stops nothing.
report::Findings of_concern(const Workbench& bench, const ExtraRecords& records);

}  // namespace benchleaf::command
