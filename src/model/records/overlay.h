#pragma once

#include <string>
#include <vector>

#include "model/record.h"

namespace benchleaf::model {

/// The head of an overlay, overlay.yaml: whose edition it is. Its records lie in the knowledge base with all others.
struct Overlay {
  /// Pages that a chapter of the handbook gets besides its own.
  struct MorePages {
    std::string chapter;  ///< id of a chapter of the handbook
    References pages;     ///< `page/ID`
    base::Span span;      ///< of the chapter's id
  };

  base::FileId file = base::kNoFile;
  base::Span span;      ///< of the name
  std::string name;     ///< `Quillfen bench club`: what marks an entry
  std::string imprint;  ///< the line on the cover
  std::string date;     ///< 2026-11
  std::string note;     ///< why the records differ, for the colophon, or empty
  std::vector<MorePages> chapters;
  Node root;
  std::vector<std::string> unusable;
  std::vector<ReferencePlace> references;
};

}  // namespace benchleaf::model
