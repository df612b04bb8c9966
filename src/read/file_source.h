#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf::read {

/// One entry below the root of a folder tree. `path` is relative, with `/`.
struct FileEntry {
  enum class Type { file, link, empty_folder, other };
  std::string path;
  Type type = Type::file;
  std::uint64_t size = 0;
};

/// A folder tree to read from: the command brings the one on disk, tests bring one in memory.
class FileSource {
 public:
  virtual ~FileSource() = default;
  /// Every entry that is not a folder with something in it, ordered by path; links are not followed. Nothing if the root cannot be read.
  virtual std::optional<std::vector<FileEntry>> list() const = 0;
  /// The bytes of a file, or nothing if it cannot be read.
  virtual std::optional<std::string> read(const std::string& path) const = 0;
  /// The path as findings show it.
  virtual std::string shown(const std::string& path) const = 0;
};

/// A folder tree in memory.
class MemoryFiles final : public FileSource {
 public:
  MemoryFiles(std::string root, std::map<std::string, std::string> files) : root_(std::move(root)), files_(std::move(files)) {}
  std::optional<std::vector<FileEntry>> list() const override;
  std::optional<std::string> read(const std::string& path) const override;
  std::string shown(const std::string& path) const override { return root_ + "/" + path; }

 private:
  std::string root_;
  std::map<std::string, std::string> files_;
};

}  // namespace benchleaf::read
