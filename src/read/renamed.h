#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/span.h"
#include "model/node.h"
#include "read/file_source.h"
#include "read/shapes.h"
#include "report/finding.h"

namespace benchleaf::read {

/// A field that had another name in an older format.
struct RenamedField {
  std::string kind;                ///< `cell`, `handbook`, `overlay`
  std::vector<std::string> where;  ///< way to the mapping that holds it; `*` stands for every entry of a list
  std::string was;
  std::string now;
  int since = 2;  ///< first format with the new name
};

/// renamed.yaml of a schema folder: the newest format of content, and what older ones called a field.
struct Renamed {
  int format = 1;
  std::vector<RenamedField> fields;  ///< the oldest renaming first
};

/// The table of a schema folder; one that cannot be read is a finding and renames nothing.
Renamed read_renamed(const FileSource& schema, const Shapes& shapes, base::FileTable& files, report::Findings& findings);

/// Gives the fields of one file of an older format the names of today, each with a warning at the old name; so are the paths of
/// `basis` and `conflicts` that begin with one. Where both names stand, nothing is renamed and the shape refuses the old one.
void rename_fields(std::string_view kind, int format, const Renamed& renamed, model::Node& root, report::Findings& findings);

/// The same for the facts that a page of an older format asks for, `](cell/sr754w#across)`: the body with the paths of today.
/// Places of later findings count the new words of the same line.
std::string with_renamed_links(std::string body, base::FileId file, int first_line, int format, const Renamed& renamed,
                               report::Findings& findings);

}  // namespace benchleaf::read
