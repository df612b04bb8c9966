#pragma once

#include <string>
#include <string_view>

#include "base/span.h"
#include "report/finding.h"

namespace benchleaf::read {

/// The two parts of a page file: YAML between two lines `---` at its very beginning, then Markdown.
struct PageFile {
  bool has_head = false;
  std::string head;  ///< begins on line 2
  std::string body;
  int body_line = 1;  ///< line of the file on which the body begins
};

/// Splits a page file; one without a head, or not in UTF-8, is a finding.
PageFile split_page(std::string_view text, base::FileId file, report::Findings& findings);

}  // namespace benchleaf::read
