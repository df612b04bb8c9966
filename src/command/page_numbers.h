#pragma once

#include <functional>
#include <map>
#include <string>

#include "command/options.h"

namespace benchleaf::command {

inline constexpr std::string_view kPageNumbersName = "page-numbers";

/// SHA-256 over the names and bytes of all files of the content and its overlays: what page numbers belong to.
std::string content_mark(const CommonOptions& options);

/// `benchleaf-pages 1`, `content SHA256`, then `kind/id PAGE` a line, for the A4 handbook.
std::string page_numbers_text(const std::string& mark, const std::map<std::string, std::string>& pages);

/// The page of a record by the file in the folder `bind` writes to; empty where there is none or it belongs to other content.
std::function<std::string(const std::string&)> page_numbers(const CommonOptions& options);

}  // namespace benchleaf::command
