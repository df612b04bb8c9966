#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "base/span.h"
#include "model/node.h"
#include "read/file_source.h"
#include "read/shape.h"
#include "report/finding.h"

namespace benchleaf::read {

/// The shapes of a schema by name: `cell`, `handbook`, `table`, `fonts`.
using Shapes = std::map<std::string, Shape, std::less<>>;

/// Reads shapes/NAME.schema.json of a schema folder: one shape for each kind of record, and those of the handbook, the
/// overlays, the tables, the fonts and the renamed fields. A shape that is missing or not understood is a finding.
Shapes load_shapes(const FileSource& schema, base::FileTable& files, report::Findings& findings);

/// One of them as it is written, for the page; nothing where it is missing or broken.
std::optional<model::Node> shape_tree(const FileSource& schema, std::string_view name);

}  // namespace benchleaf::read
