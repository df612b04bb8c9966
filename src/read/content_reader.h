#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "base/span.h"
#include "model/knowledge_base.h"
#include "read/file_source.h"
#include "read/renamed.h"
#include "read/shapes.h"
#include "report/finding.h"

namespace benchleaf::read {

inline constexpr std::size_t kMostFiles = 20000;
inline constexpr std::uint64_t kMostContentBytes = std::uint64_t{64} << 20;

/// What may stand beside a content folder: folders of other records, and the names that older formats had.
struct Additions {
  std::vector<const FileSource*> overlays;  ///< each with its overlay.yaml; a record of one replaces that of the same kind and id
  Renamed renamed = {};
};

/// A content folder to a knowledge base: handbook.yaml, KIND/ID.yaml, page/ID.md. A record whose file cannot be used is
/// named in `broken`; one with single bad fields is there with those fields named in `unusable`.
model::KnowledgeBase read_content(const FileSource& content, const Shapes& shapes, base::FileTable& files,
                                  report::Findings& findings, const Additions& additions = {});

}  // namespace benchleaf::read
