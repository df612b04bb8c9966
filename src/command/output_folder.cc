// In: files by name. Out: the same files in a folder of the user's, all of them or none.
// The exchange of the old folder for the new one is one system call: no reader, and no run that is killed, finds a mixture.

#include "command/output_folder.h"

#include <fcntl.h>
#include <signal.h>
#include <stdio.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fstream>
#include <system_error>
#include <vector>

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view kNewPrefix = ".new-";
constexpr std::string_view kAsideSuffix = "-old";

/// The process that a left-over belongs to, or nothing if the name is not one of ours.
std::optional<pid_t> owner_of(const std::string& name) {
  if (name.rfind(kNewPrefix, 0) != 0) return std::nullopt;
  std::string digits = name.substr(kNewPrefix.size());
  if (digits.ends_with(kAsideSuffix)) digits.resize(digits.size() - kAsideSuffix.size());
  const bool is_pid = !digits.empty() && digits.size() <= 9 &&
                      std::all_of(digits.begin(), digits.end(), [](char c) { return c >= '0' && c <= '9'; });
  if (!is_pid) return std::nullopt;
  return static_cast<pid_t>(std::stoi(digits));
}

bool is_alive(pid_t process) { return kill(process, 0) == 0 || errno == EPERM; }

bool exchange(const fs::path& one, const fs::path& other) {
  return renameat2(AT_FDCWD, one.c_str(), AT_FDCWD, other.c_str(), RENAME_EXCHANGE) == 0;
}

bool is_there(const fs::path& path) {
  std::error_code ignored;
  return fs::exists(fs::symlink_status(path, ignored));
}

}  // namespace

SignalsHeld::SignalsHeld() {
  sigemptyset(&held_);
  for (const int signal : {SIGINT, SIGTERM, SIGHUP, SIGQUIT}) {
    struct sigaction action = {};
    // one that the user had ignored (nohup) would be pending for ever
    if (sigaction(signal, nullptr, &action) == 0 && action.sa_handler != SIG_IGN) sigaddset(&held_, signal);
  }
  pthread_sigmask(SIG_BLOCK, &held_, &before_);
}

SignalsHeld::~SignalsHeld() { pthread_sigmask(SIG_SETMASK, &before_, nullptr); }

bool SignalsHeld::is_one_waiting() const {
  sigset_t waiting;
  sigpending(&waiting);
  for (const int signal : {SIGINT, SIGTERM, SIGHUP, SIGQUIT}) {
    if (sigismember(&held_, signal) == 1 && sigismember(&waiting, signal) == 1) return true;
  }
  return false;
}

OutputFolder::OutputFolder(fs::path folder, std::string_view name) : folder_(std::move(folder)), place_(folder_ / name) {
  std::error_code error;
  fs::create_directories(folder_, error);
  if (error || !fs::is_directory(folder_)) {
    fail("cannot make the folder", folder_, error ? error.value() : ENOTDIR);
    return;
  }
  remove_left_overs();
  fresh_ = folder_ / (std::string(kNewPrefix) + std::to_string(getpid()));
  fs::remove_all(fresh_, error);
  if (!fs::create_directory(fresh_, error)) {
    fail("cannot write into", folder_, error.value());
    fresh_.clear();
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

void OutputFolder::remove_left_overs() {
  std::error_code error;
  std::vector<fs::path> dead;
  for (const auto& entry : fs::directory_iterator(folder_, error)) {
    const auto owner = owner_of(entry.path().filename().string());
    if (owner && !is_alive(*owner)) dead.push_back(entry.path());
  }
  for (const auto& path : dead) fs::remove_all(path, error);
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

/// Gives the new folder an entry of the old one, the same file where the file system has hard links.
bool OutputFolder::carry_over(const fs::path& entry) {
  const fs::path to = fresh_ / entry.filename();
  if (is_there(to)) return true;
  std::error_code error;
  constexpr auto kLinked = fs::copy_options::recursive | fs::copy_options::copy_symlinks | fs::copy_options::create_hard_links;
  fs::copy(entry, to, kLinked, error);
  if (!error) return true;
  fs::remove_all(to, error);
  fs::copy(entry, to, fs::copy_options::recursive | fs::copy_options::copy_symlinks, error);
  return !error || fail("cannot keep", entry, error.value());
}

bool OutputFolder::carry_over() {
  if (!fs::is_directory(fs::symlink_status(place_))) return true;
  std::error_code error;
  for (const auto& entry : fs::directory_iterator(place_, error)) {
    if (!carry_over(entry.path())) return false;
  }
  return !error || fail("cannot read", place_, error.value());
}

bool OutputFolder::put_in_place() {
  if (!is_there(place_)) return rename(fresh_.c_str(), place_.c_str()) == 0 || fail("cannot put in place", place_, errno);
  if (exchange(fresh_, place_)) return true;
  // A file system without the exchange: the old folder steps aside first and comes back if the new one cannot follow.
  fs::path aside = fresh_;
  aside += kAsideSuffix;
  if (rename(place_.c_str(), aside.c_str()) != 0) return fail("cannot replace", place_, errno);
  if (rename(fresh_.c_str(), place_.c_str()) != 0) {
    const int why = errno;
    rename(aside.c_str(), place_.c_str());
    return fail("cannot replace", place_, why);
  }
  fresh_ = aside;
  return true;
}

bool OutputFolder::commit() {
  if (!problem_.empty()) return false;
  if (is_there(place_) && !fs::is_directory(place_)) return fail("cannot replace", place_, ENOTDIR);
  if (!carry_over() || !put_in_place()) return false;
  std::error_code ignored;
  fs::remove_all(fresh_, ignored);
  fresh_.clear();
  return true;
}

}  // namespace benchleaf::command
