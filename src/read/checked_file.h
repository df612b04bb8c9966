#pragma once

#include <string>
#include <vector>

#include "base/span.h"
#include "model/node.h"
#include "read/content_files.h"
#include "read/file_source.h"
#include "read/shape.h"
#include "read/shapes.h"
#include "report/finding.h"

namespace benchleaf::read {

/// A file of the content folder that has been read and held against its shape.
struct CheckedFile {
  ContentFile name;
  base::FileId file = base::kNoFile;
  bool usable = false;  ///< false: a finding says why there is no record
  model::Node root;
  ShapeReport report;
  std::string body;  ///< of a page
  int body_line = 1;

  /// `cell/sr754w`; not for handbook.yaml, which has no kind.
  std::string reference() const { return std::string(model::kind_name(*name.kind)) + "/" + name.id; }
};

/// Files to checked trees, in their order; findings come in that order, too.
std::vector<CheckedFile> check_files(const std::vector<ContentFile>& names, const FileSource& content, const Shapes& shapes,
                                     base::FileTable& files, report::Findings& findings);

}  // namespace benchleaf::read
