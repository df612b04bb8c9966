#pragma once

#include "model/book.h"
#include "page/fill.h"
#include "page/setting.h"

namespace benchleaf::page {

enum class Numbering { roman, decimal };

/// Labels and running matter for all pages of a stack; the cover has its own.
void furnish_all(Setting& setting, const model::Book& book, PageStack& stack, Numbering numbering);

/// Front matter and body become the pages of one document.
void join(Document& document, PageStack front, PageStack body);

/// Gives every figure the box its items fill.
void box_figures(Document& document);

/// Drops elements that came to hold nothing, such as the notes set for the other side of the spread; table cells stay.
void prune_tags(Document& document);

}  // namespace benchleaf::page
