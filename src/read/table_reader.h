#pragma once

#include <string>
#include <vector>

#include "base/span.h"
#include "model/tables.h"
#include "read/file_source.h"
#include "read/shapes.h"
#include "report/finding.h"

namespace benchleaf::read {

/// tables/*.yaml of a schema folder to typed tables; a missing table or a cell that does not fit is a finding.
model::Tables read_tables(const FileSource& schema, const Shapes& shapes, base::FileTable& files, report::Findings& findings);

/// A font file, hyphenation patterns or a colour profile that the outputs are made with.
struct FontEntry {
  std::string role;  ///< text, text-italic, ...; empty for what is no font
  std::string file;
  std::string path;
  std::string package;
  std::string version;
  std::string sha256;
  base::Span span;
};

struct FontList {
  std::vector<FontEntry> fonts;  ///< in file order
  FontEntry hyphenation;
  FontEntry profile;
};

/// fonts.yaml of a schema folder.
FontList read_fonts(const FileSource& schema, const Shapes& shapes, base::FileTable& files, report::Findings& findings);

}  // namespace benchleaf::read
