#pragma once

#include <string>
#include <vector>

#include "model/book.h"
#include "report/finding.h"

namespace benchleaf::html {

/// The whole book as one file that asks for no other: the pages of the site below each other, with the style sheet and all that
/// the pages run inside, `program` (the scripts of the program and of its data) before the rest. Its policy names what may run by
/// hash. Dead links are those of the site.
std::string render_single(const model::Book& book, const std::vector<std::string>& program);

}  // namespace benchleaf::html
