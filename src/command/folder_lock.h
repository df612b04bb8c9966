#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace benchleaf::command {

/// How the names of everything begin that a run makes for itself beside its output.
inline constexpr const char* kOwnPrefix = ".new-";

/// `.new-HOST-PROCESS-RANDOM`: a name that no other run has, on this machine, in another container or on another machine.
std::string own_name();
/// The start of own_name() that all runs on this machine share.
std::string own_names_here();
/// Whether a name is one that own_name() gives, alone or with something behind it that begins with `-old`.
bool is_own_name(std::string_view name);

/// A lock that the kernel lets go of when its holder dies. Locks of other machines count only where the file system shares them.
class FileLock {
 public:
  FileLock() = default;
  ~FileLock() { release(); }
  FileLock(const FileLock&) = delete;
  FileLock& operator=(const FileLock&) = delete;

  /// Tries to lock a file or folder. False with errno: EWOULDBLOCK where somebody holds it, ENOENT where it is not there or was
  /// taken away meanwhile.
  bool take(const std::filesystem::path& path);
  void release();
  int descriptor() const { return descriptor_; }

 private:
  int descriptor_ = -1;
};

/// The right to change what one folder holds, by the file `.new-lock` in it. One run at a time has it.
class FolderLock {
 public:
  ~FolderLock() { release(); }

  /// Waits for the lock, at most `seconds`. Empty, or why it was not given; a holder that is known is named.
  std::string take(const std::filesystem::path& folder, int seconds);
  /// Gives the lock back and takes the file away.
  void release();

 private:
  bool try_once();

  std::filesystem::path path_;
  FileLock lock_;
};

}  // namespace benchleaf::command
