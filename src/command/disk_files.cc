// In: a folder on disk. Out: its entries in order, and their bytes. Links are named, never followed.

#include "command/disk_files.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <system_error>
#include <utility>

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;
using read::FileEntry;

FileEntry::Type type_of(const fs::file_status& status) {
  if (fs::is_symlink(status)) return FileEntry::Type::link;
  if (fs::is_directory(status)) return FileEntry::Type::empty_folder;
  return fs::is_regular_file(status) ? FileEntry::Type::file : FileEntry::Type::other;
}

}  // namespace

std::optional<std::vector<FileEntry>> DiskFiles::list() const {
  std::error_code error;
  std::vector<FileEntry> entries;
  fs::recursive_directory_iterator at(root_, error);
  if (error) return std::nullopt;
  for (const fs::recursive_directory_iterator end; at != end; at.increment(error)) {
    if (error) return std::nullopt;
    const fs::file_status status = at->symlink_status(error);
    if (error) return std::nullopt;
    if (fs::is_directory(status) && !fs::is_empty(at->path(), error)) continue;
    if (error) return std::nullopt;
    FileEntry entry{at->path().lexically_relative(root_).generic_string(), type_of(status), 0};
    if (entry.type == FileEntry::Type::file) entry.size = at->file_size(error);
    if (error) return std::nullopt;
    entries.push_back(std::move(entry));
  }
  if (error) return std::nullopt;
  std::sort(entries.begin(), entries.end(), [](const FileEntry& one, const FileEntry& other) { return one.path < other.path; });
  return entries;
}

std::optional<std::string> DiskFiles::read(const std::string& path) const { return read_file(root_ / path); }

std::string DiskFiles::shown(const std::string& path) const { return (root_ / path).generic_string(); }

std::optional<std::string> read_file(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  if (!in) return std::nullopt;
  std::string bytes((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
  if (in.bad()) return std::nullopt;
  return bytes;
}

}  // namespace benchleaf::command
