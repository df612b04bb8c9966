#pragma once

#include <string_view>

#include "page/display.h"
#include "report/finding.h"

namespace benchleaf::pdf {

/// Holds a sound display list and a colour profile against what the file claims to be, PDF/A-1b and PDF/UA-1: title,
/// language, date, words for figures and links, scopes of head cells, targets. What fails is a finding.
void check_claims(const page::Document& document, std::string_view profile, report::Findings& findings);

}  // namespace benchleaf::pdf
