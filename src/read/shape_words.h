#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "model/node.h"
#include "read/schema.h"
#include "read/shape.h"

namespace benchleaf::read {

/// What a value is, for `found ...`: `the text "abc"`, `the whole number 3`, `a list of 2`.
std::string describe(const model::Node& node);

/// `"abc"`, cut at 60 code points.
std::string in_marks(std::string_view text);

/// The candidate that was most likely meant, or empty; nothing as long as a sentence is a misspelt word.
std::string likely_word(std::string_view word, const std::vector<std::string>& candidates);

/// `a, b or c`.
std::string one_of(const std::vector<std::string>& words);

/// What a schema asks for, for `expected ...`.
std::string expectation(const Shape& shape, SchemaId id);

/// Types as words: `a text`, `a list or a mapping`.
std::string type_words(unsigned types);

}  // namespace benchleaf::read
