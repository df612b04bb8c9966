#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "read/file_source.h"

namespace benchleaf::command {

/// A folder tree on disk. Paths are shown as the user named the folder.
class DiskFiles final : public read::FileSource {
 public:
  explicit DiskFiles(std::filesystem::path root) : root_(std::move(root)) {}
  std::optional<std::vector<read::FileEntry>> list() const override;
  std::optional<std::string> read(const std::string& path) const override;
  std::string shown(const std::string& path) const override;

 private:
  std::filesystem::path root_;
};

/// The bytes of one file, or nothing if it cannot be read.
std::optional<std::string> read_file(const std::filesystem::path& path);

}  // namespace benchleaf::command
