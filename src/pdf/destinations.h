#pragma once

#include <vector>

#include "page/display.h"
#include "pdf/file_output.h"

namespace benchleaf::pdf {

/// How many objects the tree of the destinations takes; 0 where there are none.
int destination_objects(const page::Document& document);

/// Writes the destinations under their names, so that links, bookmarks and addresses like `#cell/393` find them, as the
/// objects from `root` on. `pages` are the page objects.
void write_destinations(FileOutput& out, ObjectNumber root, const page::Document& document,
                        const std::vector<ObjectNumber>& pages);

}  // namespace benchleaf::pdf
