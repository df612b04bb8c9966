// In: a folder that several runs may write into at once. Out: one of them at a time.

#include "command/folder_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <chrono>
#include <cstring>
#include <fstream>
#include <random>
#include <system_error>
#include <thread>

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;

constexpr const char* kLockName = ".new-lock";
constexpr std::string_view kDigits = "0123456789abcdef";
constexpr std::size_t kRandomDigits = 12;
constexpr auto kPause = std::chrono::milliseconds(20);

std::string host_name() {
  std::array<char, 256> name{};
  if (gethostname(name.data(), name.size() - 1) != 0) return "host";
  std::string host(name.data());
  std::replace_if(
      host.begin(), host.end(), [](unsigned char c) { return std::isalnum(c) == 0; }, '_');
  return host.empty() ? "host" : host;
}

/// The file that is open is still the one of that name: its last holder may have taken it away since.
bool is_still(int descriptor, const fs::path& path) {
  struct stat open = {}, named = {};
  return fstat(descriptor, &open) == 0 && stat(path.c_str(), &named) == 0 && open.st_ino == named.st_ino &&
         open.st_dev == named.st_dev;
}

}  // namespace

std::string own_names_here() { return kOwnPrefix + host_name() + "-"; }

std::string own_name() {
  std::random_device random;
  std::string name = own_names_here() + std::to_string(getpid()) + "-";
  for (std::size_t i = 0; i < kRandomDigits; ++i) name += kDigits[random() % kDigits.size()];
  return name;
}

bool is_own_name(std::string_view name) {
  const auto consists_of = [](std::string_view text, std::string_view characters) {
    return !text.empty() && text.find_first_not_of(characters) == std::string_view::npos;
  };
  if (name.substr(0, 5) != kOwnPrefix) return false;
  name = name.substr(5, name.find("-old") == std::string_view::npos ? name.size() : name.find("-old") - 5);
  const std::size_t last = name.rfind('-');
  if (last == std::string_view::npos || last == 0) return false;
  const std::size_t middle = name.rfind('-', last - 1);
  if (middle == std::string_view::npos || middle == 0) return false;
  return name.size() - last == kRandomDigits + 1 && consists_of(name.substr(last + 1), kDigits) &&
         consists_of(name.substr(middle + 1, last - middle - 1), "0123456789");
}

bool FileLock::take(const fs::path& path) {
  release();
  descriptor_ = open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (descriptor_ < 0) return false;
  int why = 0;
  if (flock(descriptor_, LOCK_EX | LOCK_NB) != 0) {
    why = errno;
  } else if (!is_still(descriptor_, path)) {
    why = ENOENT;
  } else {
    return true;
  }
  release();
  errno = why;
  return false;
}

void FileLock::release() {
  if (descriptor_ >= 0) close(descriptor_);
  descriptor_ = -1;
}

bool FolderLock::try_once() {
  const int file = open(path_.c_str(), O_CREAT | O_RDWR | O_CLOEXEC, 0666);
  if (file < 0) return false;
  close(file);
  return lock_.take(path_);
}

std::string FolderLock::take(const fs::path& folder, int seconds) {
  path_ = folder / kLockName;
  const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(seconds);
  while (!try_once()) {
    if (errno != EWOULDBLOCK && errno != ENOENT) {
      const std::string why = std::strerror(errno);
      path_.clear();
      return "cannot lock the folder " + folder.string() + ": " + why;
    }
    if (std::chrono::steady_clock::now() >= end) {
      std::string holder;
      std::getline(std::ifstream(path_), holder);
      path_.clear();
      return "another run" + (holder.empty() ? "" : " (" + holder + ")") + " is writing into " + folder.string() +
             ": try again when it has ended";
    }
    std::this_thread::sleep_for(kPause);
  }
  std::ofstream(path_) << "process " << getpid() << " on " << host_name() << "\n";
  return {};
}

void FolderLock::release() {
  if (path_.empty() || lock_.descriptor() < 0) return;
  std::error_code ignored;
  fs::remove(path_, ignored);  // before it is let go of, or a run that waits would hold a file without a name
  lock_.release();
}

}  // namespace benchleaf::command
