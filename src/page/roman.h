#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace benchleaf::page {

/// `xiv`, for 1 to 3999; empty for other numbers.
std::string roman(int number);
/// The number that `roman` writes so; nothing for any other text, `iiii` among them.
std::optional<int> read_roman(std::string_view text);

}  // namespace benchleaf::page
