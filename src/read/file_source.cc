// In: a folder tree held in memory. Out: the same answers as one on disk.
#include "read/file_source.h"

namespace benchleaf::read {

std::optional<std::vector<FileEntry>> MemoryFiles::list() const {
  std::vector<FileEntry> entries;
  for (const auto& [path, text] : files_) entries.push_back({path, FileEntry::Type::file, text.size()});
  return entries;
}

std::optional<std::string> MemoryFiles::read(const std::string& path) const {
  auto found = files_.find(path);
  if (found == files_.end()) return std::nullopt;
  return found->second;
}

}  // namespace benchleaf::read
