#pragma once

#include <string>

namespace benchleaf::web {

/// A copy that the page's script frees, ended by a zero; nullptr where there is no memory.
char* c_text(const std::string& text);

}  // namespace benchleaf::web
