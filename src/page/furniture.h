#pragma once

#include "model/book.h"
#include "page/fill.h"
#include "page/setting.h"

namespace benchleaf::page {

/// Running head, folio, thumb tabs and check bar of one page: content that no reader is told about twice.
/// `label` is the page's printed number.
void furnish(Setting& setting, const model::Book& book, const PageNotes& notes, Side side, const std::string& label, Page& page);

/// The thumb index of the cover: every chapter's tab with its title beside it.
void furnish_cover(Setting& setting, const model::Book& book, Page& page);

}  // namespace benchleaf::page
