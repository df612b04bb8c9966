#pragma once

#include <functional>
#include <string>

#include "model/sheet.h"

namespace benchleaf::compose {

/// The printed page (`24`) of the record of that reference, or empty.
using PageOf = std::function<std::string(const std::string&)>;

/// Where the book says more of a record, to stand in a chart until its page is known.
model::Runs more_at(const std::string& reference);

/// Puts printed pages in place of what more_at() left, and at the foot of which `book` they are. What stands on no page is left
/// out, and so is a column of pages that stays empty.
void name_pages(model::SheetSet& chart, const PageOf& page_of, const std::string& book);

}  // namespace benchleaf::compose
