#pragma once

#include "compose/desk.h"
#include "model/book.h"

namespace benchleaf::compose {

/// Records to the index: numbers, names, other names; equal words are one entry; in index order.
model::IndexList make_index_list(const Desk& desk);

}  // namespace benchleaf::compose
