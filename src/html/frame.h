#pragma once

#include <string>

#include "html/markup.h"
#include "html/setting.h"

namespace benchleaf::html {

/// The bytes of a page around its content: head, bars, chapter index, breadcrumb, legend of the signs it used, ways to
/// the pages before and after it.
std::string framed(const Markup& content, Setting& setting);

}  // namespace benchleaf::html
