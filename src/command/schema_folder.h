#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace benchleaf::command {

/// The folder of records: `given` if it is not empty; else `content` in the current folder, else the installed one beside the
/// program
/// (`../share/benchleaf/content`). Where there is none, `content`.
std::filesystem::path find_content(const std::string& given);

/// Where the shapes and tables lie, or every place that was looked at.
struct SchemaFolder {
  std::filesystem::path path;  ///< empty: none was found
  std::vector<std::filesystem::path> looked_at;
};

/// `given` if it is not empty; else beside the content, else upwards from the current folder, else beside the program
/// (`../share/benchleaf/schema`). A schema folder holds `shapes` and `tables`.
SchemaFolder find_schema(const std::string& given, const std::filesystem::path& content);

}  // namespace benchleaf::command
