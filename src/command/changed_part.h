#pragma once

#include <filesystem>
#include <set>

#include "base/span.h"
#include "command/git.h"
#include "report/finding.h"

namespace benchleaf::command {

/// Turns what two records have in common by mistake (a number, a name) so that it is reported at the file that changed
/// last; where git cannot tell, it is reported at both.
void report_at_newer(report::Findings& findings, const base::FileTable& files, const Git& git);

/// The findings of these files, with all errors of the others: a record that was taken out breaks those that name it.
report::Findings of_changed(const report::Findings& findings, const base::FileTable& files,
                            const std::set<std::filesystem::path>& changed);

}  // namespace benchleaf::command
