#pragma once

#include <string>
#include <vector>

#include "page/text/fonts.h"
#include "read/table_reader.h"
#include "report/finding.h"

namespace benchleaf::command {

/// The bytes that setting and writing need, and what MANIFEST says about them.
struct FontBytes {
  std::vector<page::FontFile> fonts;  ///< those that the setters have a use for
  page::FontFile hyphenation;         ///< patterns; like the profile's, its face means nothing
  page::FontFile profile;             ///< colour profile
};

/// Reads what schema/fonts.yaml names. A file that is missing is an error, another hash than the recorded one a warning.
FontBytes read_font_files(const read::FontList& list, report::Findings& findings);

}  // namespace benchleaf::command
