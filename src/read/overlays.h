#pragma once

#include <vector>

#include "read/checked_file.h"
#include "report/finding.h"

namespace benchleaf::read {

/// Lays the records of the overlays over those of the content: of two of one kind and id the one below is taken out and kept in
/// `replaced`. Of two in two overlays the first holds, with a finding at the second.
void lay_over(std::vector<CheckedFile>& files, report::Findings& findings);

}  // namespace benchleaf::read
