#pragma once

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "read/file_source.h"

namespace benchleaf::test {

/// A folder on disk for tests over the real schema and content; names sorted, links not followed.
class DiskFiles final : public read::FileSource {
 public:
  explicit DiskFiles(std::filesystem::path root) : root_(std::move(root)) {}

  std::optional<std::vector<read::FileEntry>> list() const override {
    namespace fs = std::filesystem;
    std::vector<read::FileEntry> entries;
    for (const auto& entry : fs::recursive_directory_iterator(root_)) {
      if (entry.is_directory() && !entry.is_symlink()) continue;
      const auto type = entry.is_symlink() ? read::FileEntry::Type::link : read::FileEntry::Type::file;
      entries.push_back({fs::relative(entry.path(), root_).generic_string(), type, entry.is_symlink() ? 0 : entry.file_size()});
    }
    std::sort(entries.begin(), entries.end(), [](const auto& a, const auto& b) { return a.path < b.path; });
    return entries;
  }
  std::optional<std::string> read(const std::string& path) const override {
    std::ifstream stream(root_ / path, std::ios::binary);
    if (!stream) return std::nullopt;
    return std::string(std::istreambuf_iterator<char>(stream), {});
  }
  std::string shown(const std::string& path) const override { return root_.filename().string() + "/" + path; }

 private:
  std::filesystem::path root_;
};

}  // namespace benchleaf::test
