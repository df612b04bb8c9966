#pragma once

#include <string>

#include "model/book.h"
#include "report/finding.h"

namespace benchleaf::html {

/// The whole book as one file that asks for no other: the pages of the site below each other, with style sheet and search
/// inside; the calculators are told, not run. Its policy names what may run by hash. Dead links are those of the site.
std::string render_single(const model::Book& book);

}  // namespace benchleaf::html
