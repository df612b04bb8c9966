#pragma once

#include <string_view>

#include "page/display.h"

namespace benchleaf::pdf {

/// The standard structure type of a role, as ISO 32000-1, 14.8.4 names it.
std::string_view role_name(page::Role role);

}  // namespace benchleaf::pdf
