#pragma once

#include "page/display.h"
#include "page/text/fonts.h"
#include "report/finding.h"

namespace benchleaf::pdf {

/// Whether every number of the display list that names a page, tag or font names one, every tag stands behind its parent and
/// every page has a size that PDF allows. What does not is a finding; such a list cannot be written.
bool check_display_list(const page::Document& document, const page::FontSet& fonts, report::Findings& findings);

}  // namespace benchleaf::pdf
