#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::base {

/// Slips between two words, in code points: one letter more, less, other, or two neighbours swapped each count one.
std::size_t edit_distance(std::string_view one, std::string_view other);

/// The candidate that was most likely meant, or empty: the first of those with the fewest slips. At most one slip in a
/// word of 3 or 4 letters, two in one of 5 to 8, three in a longer one; words that differ in case alone always fit.
std::string nearest_word(std::string_view word, const std::vector<std::string>& candidates);

/// `a, b or c`, for messages.
std::string or_list(const std::vector<std::string>& words);

}  // namespace benchleaf::base
