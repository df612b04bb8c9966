#pragma once

#include <string>

#include "base/span.h"
#include "report/finding.h"

namespace benchleaf::report {

/// How many findings of one rule in one file are printed; the rest is counted.
inline constexpr int kMostPrinted = 50;

/// Findings in their order as lines for a terminal: place, severity, message, rule; the source line with a caret; the
/// hint; the notes. A count closes the list. No findings, no text. Control characters of the content never reach the
/// terminal. `colour` adds ANSI colours.
std::string findings_text(const Findings& findings, const base::FileTable& files, bool colour);

/// `2 errors, 1 warning`, or `no findings`.
std::string count_text(const Findings& findings);

}  // namespace benchleaf::report
