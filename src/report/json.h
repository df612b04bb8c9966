#pragma once

#include <string>

#include "base/span.h"
#include "report/finding.h"

namespace benchleaf::report {

/// All findings in their order as one JSON object, {"findings": [{rule, severity, file, line, column, message, hint,
/// notes: [{file, line, column, text}]}]}, with a line end. A finding of no file has an empty `file`; line and column
/// are 0 where the whole file is meant. Ill-formed UTF-8 becomes U+FFFD.
std::string findings_json(const Findings& findings, const base::FileTable& files);

}  // namespace benchleaf::report
