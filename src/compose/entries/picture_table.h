#pragma once

#include <optional>

#include "compose/desk.h"
#include "model/book.h"

namespace benchleaf::compose {

/// What a page asks for with `show: pictures` and `rows: [{ picture: plus-up, words: Most cells }]`: each picture beside its
/// words. Nothing where a row lacks either or names no picture of the bench or of the intake card.
std::optional<model::Table> picture_table(const model::DerivedRequest& request);

}  // namespace benchleaf::compose
