#pragma once

#include <string>

#include "page/display.h"
#include "page/text/fonts.h"
#include "report/finding.h"

namespace benchleaf::pdf {

/// The bytes of the ICC profile (version 2, three components) that says which red, green and blue are meant.
struct IccProfile {
  std::string bytes;
};

/// One PDF 1.4 file: built to PDF/A-1b and PDF/UA-1, tagged, fonts embedded. The same input gives the same bytes. Empty, with
/// a finding, where the display list cannot be written at all.
std::string write_pdf(page::Document document, const page::FontSet& fonts, const IccProfile& profile, report::Findings& findings);

}  // namespace benchleaf::pdf
