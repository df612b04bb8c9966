#pragma once

#include <map>
#include <string>

#include "command/font_files.h"
#include "model/records/handbook.h"

namespace benchleaf::command {

/// MANIFEST: what was written, from what: edition, fonts with their hashes, every file with its SHA-256, in order.
std::string manifest_text(const model::Handbook& handbook, const FontBytes& fonts,
                          const std::map<std::string, std::string>& files);

}  // namespace benchleaf::command
