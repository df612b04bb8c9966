#pragma once

#include <string>

#include "command/shape_fields.h"

namespace benchleaf::command {

/// A record to start from: the line for editors, then each field under its description. Required fields stand open, to be filled
/// in; optional ones behind a `#` that is to be taken away. For a page the fields are its head, and a line of text follows.
std::string draft_text(const RecordShape& shape, const std::string& id);

}  // namespace benchleaf::command
