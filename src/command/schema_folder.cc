// In: what the user said, and where the content is. Out: the folder of shapes and tables.

#include "command/schema_folder.h"

#include <system_error>

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;

constexpr const char* kName = "schema";
constexpr const char* kThisProgram = "/proc/self/exe";

bool is_schema(const fs::path& folder) {
  std::error_code ignored;
  return fs::is_directory(folder / "shapes", ignored) && fs::is_directory(folder / "tables", ignored);
}

/// `content` and `./content/` lie in `.`, `a/content` lies in `a`.
fs::path folder_of(const fs::path& content) {
  const fs::path clean = content.lexically_normal();
  return clean.has_filename() ? clean.parent_path() : clean.parent_path().parent_path();
}

std::vector<fs::path> upwards() {
  std::error_code ignored;
  std::vector<fs::path> places;
  fs::path step;
  for (fs::path folder = fs::current_path(ignored); !folder.empty(); folder = folder.parent_path()) {
    places.push_back(step / kName);
    step /= "..";
    if (folder == folder.parent_path()) break;
  }
  return places;
}

}  // namespace

SchemaFolder find_schema(const std::string& given, const fs::path& content) {
  SchemaFolder found;
  if (!given.empty()) {
    found.looked_at.emplace_back(given);
  } else {
    found.looked_at.push_back(folder_of(content) / kName);
    for (auto& place : upwards()) found.looked_at.push_back(std::move(place));
    std::error_code error;
    const fs::path program = fs::read_symlink(kThisProgram, error);
    if (!error) found.looked_at.push_back(program.parent_path().parent_path() / "share" / "benchleaf" / kName);
  }
  for (const auto& place : found.looked_at) {
    if (!is_schema(place)) continue;
    found.path = place;
    break;
  }
  return found;
}

}  // namespace benchleaf::command
