// A library that is loaded in front of libc (LD_PRELOAD) and makes one thing go wrong. What, says BENCHLEAF_FAULT:
//   count FILE    nothing; at the end FILE holds the number of calls and of bytes written
//   kill N        the program is killed at its call N, after half of what a write would write
//   stop N        a stop signal (SIGTERM) arrives at call N
//   full BYTES    the disk has room for BYTES more
//   vanish NAME   files whose path ends in NAME are gone when they are opened
// Calls are the ones that look for, open, read, write, close, make, link, rename or remove a file. Needs no rights: a small file
// system would.

#include <dirent.h>
#include <dlfcn.h>
#include <fcntl.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/uio.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <cstdint>
#include <string>

namespace {

struct Fault {
  std::string kind;
  std::string word;
  long number = -1;

  Fault() {
    const char* told = getenv("BENCHLEAF_FAULT");
    if (told == nullptr) return;
    const std::string text(told);
    const std::size_t space = text.find(' ');
    kind = text.substr(0, space);
    word = space == std::string::npos ? std::string() : text.substr(space + 1);
    number = atol(word.c_str());
  }
};

const Fault& fault() {
  static const Fault kFault;
  return kFault;
}

std::atomic<long> calls{0};
std::atomic<long> bytes{0};

template <typename Function>
Function* real(const char* name) {
  return reinterpret_cast<Function*>(dlsym(RTLD_NEXT, name));
}

/// True where this call is the one at which the fault strikes.
bool strikes(const char* kind) { return fault().kind == kind && calls == fault().number; }

/// Counts a call; a kill or a stop signal comes here.
void count() {
  ++calls;
  if (strikes("kill")) raise(SIGKILL);
  if (strikes("stop")) kill(getpid(), SIGTERM);
}

bool is_gone(const char* path) {
  if (fault().kind != "vanish") return false;
  const std::size_t length = strlen(path), end = fault().word.size();
  return length >= end && fault().word == path + (length - end);
}

bool is_full() { return fault().kind == "full" && bytes >= fault().number; }

/// Bytes that still go onto the disk: all, or what there is room for.
std::size_t room(std::size_t wanted) {
  if (fault().kind != "full") return wanted;
  const long left = fault().number - bytes;
  return left < static_cast<long>(wanted) ? static_cast<std::size_t>(left > 0 ? left : 0) : wanted;
}

/// What both write functions do: `data` in one piece, to a file of the run and not to the terminal.
ssize_t write_some(int to, const void* data, std::size_t size) {
  using Write = ssize_t(int, const void*, std::size_t);
  static Write* const kReal = real<Write>("write");
  if (to <= STDERR_FILENO) return kReal(to, data, size);
  ++calls;
  if (strikes("stop")) kill(getpid(), SIGTERM);
  if (strikes("kill")) {
    kReal(to, data, size / 2);
    raise(SIGKILL);
  }
  if (is_full() && size > 0) {
    errno = ENOSPC;
    return -1;
  }
  const ssize_t written = kReal(to, data, room(size));
  if (written > 0) bytes += written;
  return written;
}

struct Report {
  Report() { fault(); }  // what is made before is there until after
  ~Report() {
    if (fault().kind != "count") return;
    const std::string text = std::to_string(calls) + " " + std::to_string(bytes) + "\n";
    FILE* file = real<FILE*(const char*, const char*)>("fopen")(fault().word.c_str(), "w");
    if (file == nullptr) return;
    fputs(text.c_str(), file);
    fclose(file);
  }
} report;

FILE* open_stream(const char* name, const char* path, const char* mode) {
  count();
  const bool writes = strpbrk(mode, "wa+") != nullptr;
  if (is_gone(path)) {
    errno = ENOENT;
    return nullptr;
  }
  if (writes && is_full()) {
    errno = ENOSPC;
    return nullptr;
  }
  return real<FILE*(const char*, const char*)>(name)(path, mode);
}

}  // namespace

// The names and types below are libc's.
extern "C" {

FILE* fopen(const char* path, const char* mode) { return open_stream("fopen", path, mode); }
FILE* fopen64(const char* path, const char* mode) { return open_stream("fopen64", path, mode); }

int fclose(FILE* file) {
  count();
  return real<int(FILE*)>("fclose")(file);
}

ssize_t read(int from, void* data, size_t size) {
  count();
  return real<ssize_t(int, void*, size_t)>("read")(from, data, size);
}

ssize_t write(int to, const void* data, size_t size) { return write_some(to, data, size); }

ssize_t writev(int to, const struct iovec* pieces, int number) {
  std::string all;
  for (int i = 0; i < number; ++i) all.append(static_cast<const char*>(pieces[i].iov_base), pieces[i].iov_len);
  return write_some(to, all.data(), all.size());
}

DIR* opendir(const char* path) {
  count();
  return real<DIR*(const char*)>("opendir")(path);
}

int mkdir(const char* path, mode_t mode) {
  count();
  if (is_full()) {
    errno = ENOSPC;
    return -1;
  }
  return real<int(const char*, mode_t)>("mkdir")(path, mode);
}

int rename(const char* from, const char* to) {
  count();
  return real<int(const char*, const char*)>("rename")(from, to);
}

int renameat2(int from_folder, const char* from, int to_folder, const char* to, unsigned flags) {
  count();
  return real<int(int, const char*, int, const char*, unsigned)>("renameat2")(from_folder, from, to_folder, to, flags);
}

int link(const char* from, const char* to) {
  count();
  return real<int(const char*, const char*)>("link")(from, to);
}

int stat(const char* path, struct stat* found) {
  count();
  return real<int(const char*, struct stat*)>("stat")(path, found);
}

int lstat(const char* path, struct stat* found) {
  count();
  return real<int(const char*, struct stat*)>("lstat")(path, found);
}

int unlink(const char* path) {
  count();
  return real<int(const char*)>("unlink")(path);
}

int unlinkat(int folder, const char* path, int flags) {
  count();
  return real<int(int, const char*, int)>("unlinkat")(folder, path, flags);
}

int remove(const char* path) {
  count();
  return real<int(const char*)>("remove")(path);
}

}  // extern "C"
