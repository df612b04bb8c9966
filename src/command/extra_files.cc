// In: a content folder, files of elsewhere. Out: one tree of both; and the tree of an overlay that leaves room for such files.

#include "command/extra_files.h"

#include <algorithm>
#include <system_error>
#include <utility>

namespace benchleaf::command {

std::optional<std::vector<read::FileEntry>> ExtraFiles::list() const {
  auto entries = content_.list();
  if (!entries) return std::nullopt;
  const auto is_extra = [this](const read::FileEntry& entry) { return extra_.count(entry.path) > 0; };
  entries->erase(std::remove_if(entries->begin(), entries->end(), is_extra), entries->end());
  for (const auto& [path, file] : extra_) {
    std::error_code error;
    const auto size = std::filesystem::file_size(file, error);
    entries->push_back({path, read::FileEntry::Type::file, error ? 0 : size});
  }
  std::sort(entries->begin(), entries->end(), [](const auto& one, const auto& other) { return one.path < other.path; });
  return entries;
}

std::optional<std::string> ExtraFiles::read(const std::string& path) const {
  const auto extra = extra_.find(path);
  return extra == extra_.end() ? content_.read(path) : read_file(extra->second);
}

std::string ExtraFiles::shown(const std::string& path) const {
  const auto extra = extra_.find(path);
  return extra == extra_.end() ? content_.shown(path) : extra->second.generic_string();
}

OverlayFiles::OverlayFiles(std::filesystem::path folder, const std::map<std::string, std::filesystem::path>& named)
    : folder_(std::move(folder)) {
  for (const auto& [path, file] : named) named_.insert(path);
}

std::optional<std::vector<read::FileEntry>> OverlayFiles::list() const {
  auto entries = folder_.list();
  if (!entries) return std::nullopt;
  const auto is_named = [this](const read::FileEntry& entry) { return named_.count(entry.path) > 0; };
  entries->erase(std::remove_if(entries->begin(), entries->end(), is_named), entries->end());
  return entries;
}

}  // namespace benchleaf::command
