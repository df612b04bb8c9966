#pragma once

#include <set>
#include <string>

#include "model/book.h"

namespace benchleaf::page {

/// Every place of the book that a link may lead to.
std::set<std::string> anchors_of(const model::Book& book);

/// The destination of a chapter's first page.
std::string chapter_anchor(const model::Chapter& chapter);

}  // namespace benchleaf::page
