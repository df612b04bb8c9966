#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "compose/desk.h"
#include "model/book.h"

namespace benchleaf::compose {

/// What a page asks for with `show: pictures` and `rows: [{ picture: plus-up, words: Most cells }]`: each picture beside its
/// words. Nothing where a row lacks either or names no picture of the bench or of the intake card.
std::optional<model::Table> picture_table(const model::DerivedRequest& request);

/// A picture of the bench or of the intake card, or nullptr.
std::shared_ptr<const model::Drawing> page_picture(const std::string& name);
std::vector<std::string> page_picture_names();

}  // namespace benchleaf::compose
