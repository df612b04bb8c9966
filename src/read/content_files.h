#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/span.h"
#include "model/record.h"
#include "read/file_source.h"
#include "report/finding.h"

namespace benchleaf::read {

/// One file of the content folder, or of an overlay, that may hold a record; no kind: its head.
struct ContentFile {
  std::string path;
  std::optional<model::Kind> kind;
  std::string id;  ///< by the file name
};

/// The one file of a content folder that is neither record nor head of the handbook: it tells contributors what the records
/// hold, and nothing of it is printed.
inline constexpr const char* kNotesForContributors = "README.md";

/// The files of a content folder in order, each with what it must be. Links, strange files, too many and too large ones
/// are findings and left out. Nothing where a finding says why none of it is read. `head` is the file beside the folders.
std::optional<std::vector<ContentFile>> list_content(const FileSource& content, const std::string& head, base::FileTable& files,
                                                     report::Findings& findings);

}  // namespace benchleaf::read
