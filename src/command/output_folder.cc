// In: files by name. Out: the same files in a folder of the user's, all of them or none.
// The exchange of the old folder for the new one is one system call: no reader, and no run that is killed, finds a mixture.

#include "command/output_folder.h"

#include <fcntl.h>
#include <stdio.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <cstring>
#include <fstream>
#include <iterator>
#include <system_error>
#include <vector>

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;

constexpr int kPatience = 60;  // seconds that a run waits for another one
constexpr auto kFresh = std::chrono::hours(24);

/// What an old output is called while the new one takes its place, where the file system cannot exchange the two.
std::string aside_suffix(const fs::path& place) { return "-old-" + place.filename().string(); }

bool exchange(const fs::path& one, const fs::path& other) {
  return renameat2(AT_FDCWD, one.c_str(), AT_FDCWD, other.c_str(), RENAME_EXCHANGE) == 0;
}

bool is_there(const fs::path& path) {
  std::error_code ignored;
  return fs::exists(fs::symlink_status(path, ignored));
}

bool is_folder(const fs::path& path) {
  std::error_code ignored;
  return fs::is_directory(fs::symlink_status(path, ignored));
}

/// The folders of runs in `folder`, those that were set aside too.
std::vector<fs::path> folders_of_runs(const fs::path& folder) {
  std::vector<fs::path> found;
  std::error_code error;
  for (const auto& entry : fs::directory_iterator(folder, error)) {
    if (is_own_name(entry.path().filename().string()) && is_folder(entry.path())) found.push_back(entry.path());
  }
  return found;
}

/// A run of this machine, in whatever container, holds a lock on its folder while it lives. One of another machine may hold a
/// lock that is not seen here: its folder is left alone for a day.
bool is_abandoned(const fs::path& path) {
  const bool from_here = path.filename().string().rfind(own_names_here(), 0) == 0;
  std::error_code error;
  const auto written = fs::last_write_time(path, error);
  return from_here || (!error && fs::file_time_type::clock::now() - written > kFresh);
}

}  // namespace

OutputFolder::OutputFolder(fs::path folder, std::string_view name) : folder_(std::move(folder)), place_(folder_ / name) {
  std::error_code error;
  fs::create_directories(folder_, error);
  if (error || !fs::is_directory(folder_)) {
    fail("cannot make the folder", folder_, error ? error.value() : ENOTDIR);
    return;
  }
  if (!follow_link()) return;
  make_fresh();
}

/// Until its lock is held, a new folder looks like one that a dead run left, and a run that cleans up may take it: then another
/// one is made. Where the file system has no locks, `claim` says so.
void OutputFolder::make_fresh() {
  for (;;) {
    const fs::path fresh = folder_ / own_name();
    std::error_code error;
    if (!fs::create_directory(fresh, error)) {
      fail("cannot write into", folder_, error.value());
      return;
    }
    if (alive_.take(fresh) || (errno != EWOULDBLOCK && errno != ENOENT)) {
      fresh_ = fresh;
      return;
    }
    fs::remove(fresh, error);
  }
}

OutputFolder::~OutputFolder() {
  std::error_code ignored;
  if (!fresh_.empty()) fs::remove_all(fresh_, ignored);
}

bool OutputFolder::fail(const std::string& what, const fs::path& where, int error) {
  if (problem_.empty()) problem_ = what + " " + where.string() + ": " + std::strerror(error);
  return false;
}

/// The folder behind a link is the output: whoever reads it by its own name must see the new one as well.
bool OutputFolder::follow_link() {
  std::error_code error;
  if (!fs::is_symlink(fs::symlink_status(place_, error))) return true;
  const fs::path target = fs::canonical(place_, error);
  if (error) return fail("cannot follow the link", place_, error.value());
  place_ = target;
  folder_ = target.parent_path();
  return true;
}

bool OutputFolder::write(const std::string& name, std::string_view bytes) {
  if (!problem_.empty()) return false;
  if (held_.is_one_waiting()) return fail("stopped before writing", fresh_ / name, EINTR);
  const fs::path path = fresh_ / name;
  std::error_code error;
  fs::create_directories(path.parent_path(), error);
  if (error) return fail("cannot make the folder", path.parent_path(), error.value());
  errno = 0;
  std::ofstream out(path, std::ios::binary);
  out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  out.close();
  if (!out) return fail("cannot write", path, errno != 0 ? errno : EIO);
  return true;
}

bool OutputFolder::claim() {
  if (!problem_.empty()) return false;
  problem_ = lock_.take(folder_, kPatience);
  claimed_ = problem_.empty();
  if (!claimed_) return false;
  put_back();
  remove_left_overs();
  return true;
}

/// A run that died between two renames left no output, and the last good one beside it: the newest of those returns.
void OutputFolder::put_back() {
  if (is_there(place_)) return;
  fs::path newest;
  fs::file_time_type newest_time = fs::file_time_type::min();
  std::error_code error;
  for (const auto& path : folders_of_runs(folder_)) {
    if (!path.filename().string().ends_with(aside_suffix(place_))) continue;
    const auto time = fs::last_write_time(path, error);
    if (!error && time >= newest_time) {
      newest = path;
      newest_time = time;
    }
  }
  if (!newest.empty()) fs::rename(newest, place_, error);
}

/// Each is removed under its own lock, so that a run which has just made its folder sees that it is gone.
void OutputFolder::remove_left_overs() {
  std::error_code error;
  for (const auto& path : folders_of_runs(folder_)) {
    FileLock lock;
    if (path != fresh_ && lock.take(path) && is_abandoned(path)) fs::remove_all(path, error);
  }
}

std::string OutputFolder::old_bytes(const std::string& name) const {
  std::error_code error;
  if (!fs::is_regular_file(place_ / name, error)) return {};  // a folder opens as a stream, and breaks when it is read
  std::ifstream in(place_ / name, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

/// Gives the new folder an entry of the old one, the same file where the file system has hard links.
bool OutputFolder::carry_over(const fs::path& entry, const fs::path& to) {
  std::error_code error;
  constexpr auto kLinked = fs::copy_options::copy_symlinks | fs::copy_options::create_hard_links;
  fs::copy(entry, to, kLinked, error);
  if (!error) return true;
  fs::remove(to, error);
  fs::copy(entry, to, fs::copy_options::copy_symlinks, error);
  return !error || fail("cannot keep", entry, error.value());
}

bool OutputFolder::carry_over(const std::function<bool(const std::string&)>& drops) {
  if (!is_folder(place_)) return true;
  std::error_code error;
  for (auto entry = fs::recursive_directory_iterator(place_, error); entry != fs::recursive_directory_iterator();
       entry.increment(error)) {
    if (error) break;
    const fs::path name = entry->path().lexically_relative(place_);
    const fs::path to = fresh_ / name;
    if (is_there(to)) continue;
    if (entry->is_directory(error) && !entry->is_symlink(error)) {  // made with the first file that it holds
      if (fs::is_empty(entry->path(), error)) fs::create_directories(to, error);
      continue;
    }
    if (drops && drops(name.generic_string())) continue;
    fs::create_directories(to.parent_path(), error);
    if (!carry_over(entry->path(), to)) return false;
  }
  return !error || fail("cannot read", place_, error.value());
}

/// All bytes are on the disk before the new folder has the old one's name. One call for the file system, since one for each of
/// several hundred files takes seconds.
bool OutputFolder::make_durable() {
  const int folder = open(fresh_.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (folder < 0) return fail("cannot write", fresh_, errno);
  const bool done = syncfs(folder) == 0;
  const int why = errno;
  close(folder);
  return done || fail("cannot write", fresh_, why);
}

bool OutputFolder::put_in_place() {
  if (!is_there(place_)) return rename(fresh_.c_str(), place_.c_str()) == 0 || fail("cannot put in place", place_, errno);
  if (exchange(fresh_, place_)) return true;
  // A file system without the exchange: the old folder steps aside first and comes back if the new one cannot follow.
  fs::path aside = fresh_;
  aside += aside_suffix(place_);
  if (rename(place_.c_str(), aside.c_str()) != 0) return fail("cannot replace", place_, errno);
  if (rename(fresh_.c_str(), place_.c_str()) != 0) {
    const int why = errno;
    rename(aside.c_str(), place_.c_str());
    return fail("cannot replace", place_, why);
  }
  fresh_ = aside;
  return true;
}

bool OutputFolder::commit(const std::function<bool(const std::string&)>& drops) {
  if (!problem_.empty() || (!claimed_ && !claim())) return false;
  if (!is_folder(fresh_)) return fail("cannot find", fresh_, ENOENT);  // somebody has cleaned up
  if (is_there(place_) && !is_folder(place_)) return fail("cannot replace", place_, ENOTDIR);
  if (!carry_over(drops) || !make_durable() || !put_in_place()) return false;
  const int folder = open(folder_.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (folder >= 0) {
    fsync(folder);  // the new name; what cannot be flushed here is whole all the same
    close(folder);
  }
  std::error_code ignored;
  fs::remove_all(fresh_, ignored);
  fresh_.clear();
  return true;
}

}  // namespace benchleaf::command
