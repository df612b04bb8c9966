#pragma once

#include "compose/desk.h"
#include "model/book.h"

namespace benchleaf::compose {

/// A chapter of the handbook: its pages of prose, then an entry for every record of its kinds: cells by size, then number,
/// all else in index order of the titles.
model::Chapter make_chapter(const Desk& desk, const model::Handbook::Chapter& wanted);

}  // namespace benchleaf::compose
