#pragma once

#include <string_view>

namespace benchleaf::html {

/// The text of handbook.css, written into the program by the build.
std::string_view style_sheet();

}  // namespace benchleaf::html
