// In: a folder and questions on its history. Out: what git says. The only file that starts another program.

#include "command/git.h"

#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <system_error>
#include <utility>

extern char** environ;

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;

/// A pipe from the program that is started, and its words on faults, which go nowhere.
class Started {
 public:
  explicit Started(std::vector<std::string> words) {
    std::array<int, 2> ends{};
    if (pipe2(ends.data(), O_CLOEXEC) != 0) return;
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
    posix_spawn_file_actions_addopen(&actions, STDIN_FILENO, "/dev/null", O_RDONLY, 0);
    posix_spawn_file_actions_addopen(&actions, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
    std::vector<char*> arguments;
    for (std::string& word : words) arguments.push_back(word.data());
    arguments.push_back(nullptr);
    runs_ = posix_spawnp(&process_, arguments.front(), &actions, nullptr, arguments.data(), environ) == 0;
    posix_spawn_file_actions_destroy(&actions);
    close(ends[1]);
    out_ = ends[0];
  }
  Started(const Started&) = delete;
  Started& operator=(const Started&) = delete;
  ~Started() {
    if (out_ >= 0) close(out_);
  }

  /// All that it prints, or nothing where it fails.
  std::optional<std::string> text() {
    if (!runs_) return std::nullopt;
    std::string text;
    std::array<char, 4096> part{};
    for (ssize_t count = 0; (count = read(out_, part.data(), part.size())) > 0;)
      text.append(part.data(), static_cast<std::size_t>(count));
    int status = 0;
    const bool ended = waitpid(process_, &status, 0) == process_;
    return ended && WIFEXITED(status) && WEXITSTATUS(status) == 0 ? std::optional(std::move(text)) : std::nullopt;
  }

 private:
  pid_t process_ = 0;
  int out_ = -1;
  bool runs_ = false;
};

/// The parts of a text that end with a zero byte.
std::vector<std::string> parts_of(const std::string& text) {
  std::vector<std::string> parts;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\0', at), text.size());
    parts.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  return parts;
}

fs::path whole_path(const fs::path& path) {
  std::error_code error;
  fs::path whole = fs::weakly_canonical(path, error);
  return error ? path : whole;
}

}  // namespace

Git::Git(fs::path folder) : folder_(std::move(folder)) {
  const auto top = ask({"rev-parse", "--show-toplevel"});
  if (!top || top->empty()) return;
  std::string path = top->front();
  while (!path.empty() && path.back() == '\n') path.pop_back();
  root_ = whole_path(path);
}

std::optional<std::vector<std::string>> Git::ask(std::vector<std::string> words) const {
  // a repository may name programs for git to run beside it; none of them is wanted
  std::vector<std::string> call = {"git", "-C", folder_.string(), "-c", "core.fsmonitor=false", "-c", "core.hooksPath=/dev/null"};
  call.insert(call.end(), words.begin(), words.end());
  const auto text = Started(std::move(call)).text();
  return text ? std::optional(parts_of(*text)) : std::nullopt;
}

std::optional<std::set<fs::path>> Git::changed_since(const std::string& commit) const {
  if (commit.empty() || commit.front() == '-') return std::nullopt;
  const auto found = ask({"rev-parse", "--verify", "--quiet", commit + "^{commit}"});
  if (!found || found->empty()) return std::nullopt;
  const std::string id = found->front().substr(0, found->front().find('\n'));
  const auto changed = ask({"diff", "--no-ext-diff", "--no-renames", "--name-only", "-z", id, "--"});
  const auto untracked = ask({"ls-files", "--others", "--exclude-standard", "--full-name", "-z"});
  if (!changed || !untracked) return std::nullopt;
  std::set<fs::path> files;
  for (const auto* list : {&*changed, &*untracked}) {
    for (const std::string& name : *list) files.insert(root_ / name);
  }
  return files;
}

bool Git::is_committed(const fs::path& file) const {
  const auto changed = ask({"status", "--porcelain", "-z", "--", whole_path(file).string()});
  return changed && changed->empty();
}

std::optional<std::string> Git::last_commit(const fs::path& file) const {
  const auto found = ask({"log", "-1", "--format=%H", "--", whole_path(file).string()});
  if (!found || found->empty()) return std::nullopt;
  return found->front();
}

std::optional<bool> Git::is_newer(const fs::path& one, const fs::path& other) const {
  if (!answers()) return std::nullopt;
  const bool one_is_old = is_committed(one), other_is_old = is_committed(other);
  if (one_is_old != other_is_old) return !one_is_old;
  const auto of_one = last_commit(one), of_other = last_commit(other);
  if (!of_one || !of_other || *of_one == *of_other) return std::nullopt;
  const auto latest = ask({"log", "-1", "--format=%H", "--", whole_path(one).string(), whole_path(other).string()});
  if (!latest || latest->empty()) return std::nullopt;
  return latest->front() == *of_one;
}

}  // namespace benchleaf::command
