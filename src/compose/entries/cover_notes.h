#pragma once

#include "compose/desk.h"
#include "model/book.h"

namespace benchleaf::compose {

/// The page after the cover: what the book does not replace, who answers for what, how to read its signs.
model::Blocks cover_notes(const Desk& desk);

}  // namespace benchleaf::compose
