#pragma once

#include <cstddef>
#include <string>

#include "query/answer.h"

namespace benchleaf::command {

/// What `find` prints, in lines of at most `width` columns where words allow it.
std::string answers_text(const query::Answers& answers, std::size_t width);

}  // namespace benchleaf::command
