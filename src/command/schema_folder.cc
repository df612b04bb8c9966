// In: what the user said. Out: the folder of records, and that of shapes and tables.

#include "command/schema_folder.h"

#include <system_error>

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;

constexpr const char* kName = "schema";
constexpr const char* kContent = "content";
constexpr const char* kThisProgram = "/proc/self/exe";

bool is_schema(const fs::path& folder) {
  std::error_code ignored;
  return fs::is_directory(folder / "shapes", ignored) && fs::is_directory(folder / "tables", ignored);
}

/// A folder that was installed with the program; empty where the program does not know its place.
fs::path installed(const char* name) {
  std::error_code error;
  const fs::path program = fs::read_symlink(kThisProgram, error);
  return error ? fs::path() : program.parent_path().parent_path() / "share" / "benchleaf" / name;
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

fs::path find_content(const std::string& given) {
  if (!given.empty()) return given;
  std::error_code ignored;
  const fs::path own = installed(kContent);
  const bool is_installed = !fs::exists(kContent, ignored) && fs::is_directory(own, ignored);
  return is_installed ? own.lexically_normal() : fs::path(kContent);
}

SchemaFolder find_schema(const std::string& given, const fs::path& content) {
  SchemaFolder found;
  if (!given.empty()) {
    found.looked_at.emplace_back(given);
  } else {
    found.looked_at.push_back(folder_of(content) / kName);
    for (auto& place : upwards()) found.looked_at.push_back(std::move(place));
    const fs::path own = installed(kName);
    if (!own.empty()) found.looked_at.push_back(own);
  }
  for (const auto& place : found.looked_at) {
    if (!is_schema(place)) continue;
    found.path = place;
    break;
  }
  return found;
}

}  // namespace benchleaf::command
