// In: text and a place. Out: a file that is there whole or not at all.

#include "command/whole_file.h"

#include <fcntl.h>
#include <stdio.h>
#include <unistd.h>

#include <cerrno>
#include <fstream>
#include <system_error>

#include "command/folder_lock.h"
#include "command/signals_held.h"

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;

fs::path beside(const fs::path& path) { return path.parent_path() / (path.filename().string() + own_name()); }

bool write_bytes(const fs::path& path, const std::string& text) {
  std::ofstream file(path, std::ios::binary | std::ios::trunc);
  file << text;
  file.close();
  return static_cast<bool>(file);
}

/// A file system without the rename that keeps an old file has links that do.
int put_in_place(const fs::path& from, const fs::path& to) {
  if (renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) return 0;
  if (errno != EINVAL && errno != ENOSYS) return errno;
  return link(from.c_str(), to.c_str()) == 0 ? 0 : errno;
}

}  // namespace

bool write_file(const fs::path& path, const std::string& text) {
  std::error_code error;
  if (fs::exists(path, error) && !fs::is_regular_file(path, error)) return write_bytes(path, text);
  const SignalsHeld held;
  const fs::path fresh = beside(path);
  bool whole = write_bytes(fresh, text);
  if (whole) fs::rename(fresh, path, error);
  whole = whole && !error;
  if (!whole) fs::remove(fresh, error);
  return whole;
}

NewFile write_new_file(const fs::path& path, const std::string& text) {
  const SignalsHeld held;
  const fs::path fresh = beside(path);
  int fault = write_bytes(fresh, text) ? 0 : EIO;
  if (fault == 0) fault = put_in_place(fresh, path);
  std::error_code ignored;
  fs::remove(fresh, ignored);  // gone already, unless it was linked or could not follow
  if (fault == 0) return NewFile::written;
  return fault == EEXIST ? NewFile::exists : NewFile::failed;
}

}  // namespace benchleaf::command
