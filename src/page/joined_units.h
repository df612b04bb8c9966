#pragma once

#include <string>
#include <string_view>

namespace benchleaf::page {

/// Prose with a space that does not break between a figure and its unit: `10 mL` stays on one line.
std::string with_units_joined(std::string_view text);

}  // namespace benchleaf::page
