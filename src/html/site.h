#pragma once

#include <map>
#include <string>

#include "model/book.h"
#include "report/finding.h"

namespace benchleaf::html {

/// The book as a site of static pages: path to bytes, the style sheet among them. Pages open from the file system, load
/// nothing but the style sheet and run no script. A link target that the book lacks is a finding and its words stay text.
std::map<std::string, std::string> render_site(const model::Book& book, report::Findings& findings);

}  // namespace benchleaf::html
