#pragma once

#include <vector>

#include "page/display.h"
#include "pdf/haru_file.h"

namespace benchleaf::pdf {

/// Adds the bookmarks, each below the last one of a lower level. A level that leaves out steps is taken as the next step.
void add_bookmarks(const page::Document& document, HaruFile& file);

}  // namespace benchleaf::pdf
