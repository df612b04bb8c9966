#pragma once

#include <string_view>

namespace benchleaf::derive {

/// Orders texts with their digits as numbers: SR41 before SR416, place 2 before place 10. Else by byte.
bool natural_less(std::string_view one, std::string_view other);

}  // namespace benchleaf::derive
