#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace benchleaf::read {

/// The place after the closing quote of the text in quotes that opens at `place`, or nothing if it is never closed.
std::optional<std::size_t> end_of_quotes(std::string_view text, std::size_t place);

/// The first line inside `text[place, end)` whose first sign stands in a column (from 0) up to `column`, as its place.
std::optional<std::size_t> shallow_line(std::string_view text, std::size_t place, std::size_t end, int column);

/// The first quote that opens a text at or after `place`, comments left out.
std::optional<std::size_t> next_quote(std::string_view text, std::size_t place);

/// Length in bytes of the word for nothing that stands as a value at `place`: 0 if none does, or if it is a key.
std::size_t null_word_length(std::string_view text, std::size_t place);

/// The place of the last dash before `place` that begins a list item with nothing behind it.
std::optional<std::size_t> dash_before(std::string_view text, std::size_t place);

/// Bytes of a plain scalar on its first line, `value` being the whole of it after folding.
std::size_t plain_length(std::string_view text, std::size_t place, std::string_view value);

}  // namespace benchleaf::read
