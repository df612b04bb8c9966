#pragma once

#include <string>

#include "base/span.h"
#include "report/finding.h"

namespace benchleaf::report {

/// All findings in their order as a SARIF 2.1.0 log of one run, with a line end. Columns count code points, as the run says;
/// rules that found nothing are not listed. A finding of no file has no location.
std::string findings_sarif(const Findings& findings, const base::FileTable& files, std::string_view version);

}  // namespace benchleaf::report
