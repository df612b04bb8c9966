#pragma once

#include "read/source_text.h"
#include "report/finding.h"

namespace benchleaf::read {

/// Looks at a page before the Markdown parser does, whose tables and open HTML take time that grows with the square of
/// their size: false where a finding says that the page is too large, or a table too wide or too long.
bool check_markdown_size(const SourceText& source, report::Findings& findings);

}  // namespace benchleaf::read
