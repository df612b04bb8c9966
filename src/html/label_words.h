#pragma once

#include <string>
#include <vector>

#include "model/label_sheet.h"

namespace benchleaf::html {

/// The words and drawings of a label, with its `lines` or those in brief, for a page that gives it its place and its type: what
/// stands at the head in one element, what stands at the foot in the next.
std::string set_label(const model::Label& label, const std::vector<model::Runs>& lines);

}  // namespace benchleaf::html
