#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/span.h"
#include "model/node.h"

namespace benchleaf::read {

/// A tree as lines of plain text, for a page that reads no YAML: one line a value, in file order, with its depth, a letter for
/// its type, its key and its words. Places in files are left out.
std::string node_lines(const model::Node& root);

/// The tree of such a text; nothing for a text that is none. A value stands in `file` at the line that it has here, counted from
/// `first_line`.
std::optional<model::Node> read_node_lines(std::string_view lines, base::FileId file = base::kNoFile, int first_line = 1);

/// The path of the value that each line holds: `steps.2.with.0`.
std::vector<std::string> node_line_paths(std::string_view lines);

}  // namespace benchleaf::read
