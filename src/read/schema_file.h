#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/span.h"
#include "model/node.h"
#include "read/file_source.h"
#include "read/shape.h"
#include "read/shapes.h"
#include "report/finding.h"

namespace benchleaf::read {

/// One YAML file of the schema folder, read and held against its shape. No root: a finding says why.
struct SchemaFile {
  base::FileId file = base::kNoFile;
  std::optional<model::Node> root;
  ShapeReport report;
};

/// Reads `path` below the schema folder; one that cannot be read is a finding.
SchemaFile read_schema_file(const FileSource& schema, const std::string& path, std::string_view shape_name, const Shapes& shapes,
                            base::FileTable& files, report::Findings& findings);

}  // namespace benchleaf::read
