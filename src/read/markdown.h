#pragma once

#include <string_view>
#include <vector>

#include "base/span.h"
#include "model/records/page.h"
#include "read/shape.h"
#include "report/finding.h"

namespace benchleaf::read {

inline constexpr std::size_t kMostPageBytes = 256 * 1024;
inline constexpr std::size_t kMostTableColumns = 40;
inline constexpr std::size_t kMostTableCells = 2000;

/// The body of a page: lines of `file` that begin at `first_line`.
struct MarkdownText {
  std::string_view text;
  base::FileId file = base::kNoFile;
  int first_line = 1;
};

/// What a body holds: blocks of the book and requests for derived blocks in their order, and the records it names.
struct MarkdownPage {
  std::vector<model::PagePart> parts;
  std::vector<FoundReference> references;
  bool whole = true;  ///< false where a finding has been raised and parts are left out
};

/// CommonMark with tables to blocks. Raw HTML, images, rules and what a table guard refuses are findings.
MarkdownPage read_markdown(const MarkdownText& input, report::Findings& findings);

}  // namespace benchleaf::read
