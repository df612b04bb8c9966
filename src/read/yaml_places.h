#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

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

/// Place of an escape that YAML does not have but the parser takes (`\'`), in a text with its double quotes.
std::optional<std::size_t> wrong_escape(std::string_view quoted);

/// Place of what may not stand between the sign of a block text (`|` or `>`) and its first line: a comment without a blank
/// in front, or a blank line that is indented deeper.
std::optional<std::size_t> wrong_block_head(std::string_view text, std::size_t place);

/// The place after the block text whose sign stands at `place`: its lines are blank or begin in a column beyond `column`.
std::size_t end_of_block(std::string_view text, std::size_t place, int column);

/// Place of the first comment without a blank in front, after a bracket, a comma or a quote.
std::optional<std::size_t> wrong_comment(std::string_view text, const std::vector<std::pair<std::size_t, std::size_t>>& scalars);

}  // namespace benchleaf::read
