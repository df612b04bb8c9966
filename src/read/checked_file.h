#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/span.h"
#include "model/node.h"
#include "model/record.h"
#include "read/content_files.h"
#include "read/file_source.h"
#include "read/renamed.h"
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
  std::optional<std::size_t> overlay;               ///< place of the overlay that it lies in
  std::shared_ptr<const model::Replaced> replaced;  ///< what it puts out of use

  /// `cell/sr754w`; not for handbook.yaml, which has no kind.
  model::RecordRef reference() const { return {*name.kind, name.id}; }
};

/// What files are held against: their shapes, and the names that fields had in the format that they are written in.
struct FileForm {
  const Shapes& shapes;
  const Renamed& renamed;
  std::string head;  ///< shape of the file that says the format: `handbook`, `overlay`
  int format = 1;    ///< of all other files
};

/// Files to checked trees, in their order; findings come in that order, too.
std::vector<CheckedFile> check_files(const std::vector<ContentFile>& names, const FileSource& content, const FileForm& form,
                                     base::FileTable& files, report::Findings& findings);

}  // namespace benchleaf::read
