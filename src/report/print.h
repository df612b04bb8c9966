#pragma once

#include <string>
#include <string_view>

#include "base/span.h"
#include "report/finding.h"

namespace benchleaf::report {

/// How many findings of one rule in one file are printed; the rest is counted.
inline constexpr int kMostPrinted = 50;

/// How findings are printed.
struct PrintOptions {
  bool colour = false;  ///< with ANSI colours
  bool notes = true;    ///< print notes; else only count them
};

/// Findings in their order as lines for a terminal: place, severity, message, rule; the source line with a caret; the
/// hint; the notes. A count closes the list. No findings, no text. Control characters of the content never reach the
/// terminal.
std::string findings_text(const Findings& findings, const base::FileTable& files, PrintOptions options = {});

/// A text for one line of a terminal: control and bidirectional characters become U+FFFD, tabs a space.
std::string printable_line(std::string_view text);

/// `2 errors, 1 warning`, or `no problems`.
std::string count_text(const Findings& findings);

}  // namespace benchleaf::report
