// In: words and a fault. Out: the program run with them in a folder of its own, and what it left there.

#include "command/bound_folder.h"

#include <fcntl.h>
#include <signal.h>
#include <stdlib.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fstream>
#include <sstream>

namespace benchleaf::test {

namespace fs = std::filesystem;

namespace {

constexpr unsigned kNobody = 65534;

void set_limit(decltype(RLIMIT_AS) what, long most) {
  if (most < 0) return;
  const rlimit limit{static_cast<rlim_t>(most), static_cast<rlim_t>(most)};
  if (setrlimit(what, &limit) != 0) _exit(124);
}

/// In the child, between fork and exec.
[[noreturn]] void become(const fs::path& place, const std::vector<std::string>& words, const RunWith& with) {
  if (chdir(place.c_str()) != 0) _exit(120);
  const int err = open("stderr", O_WRONLY | O_CREAT | O_TRUNC, 0666);
  const int out = open(with.keeps_data ? "stdout" : "/dev/null", O_WRONLY | O_CREAT | O_TRUNC, 0666);
  if (err < 0 || dup2(err, STDERR_FILENO) < 0 || dup2(out, STDOUT_FILENO) < 0) _exit(121);
  close(err);
  close(out);
  if (with.ignores_hang_up) signal(SIGHUP, SIG_IGN);
  set_limit(RLIMIT_FSIZE, with.largest_file);
  set_limit(RLIMIT_AS, with.memory);
  set_limit(RLIMIT_CPU, with.seconds);
  if (with.as_nobody && geteuid() == 0 && (setgid(kNobody) != 0 || setuid(kNobody) != 0)) _exit(122);
  if (!with.fault.empty()) {
    setenv("LD_PRELOAD", BENCHLEAF_FAULT_LIBRARY, 1);
    setenv("BENCHLEAF_FAULT", with.fault.c_str(), 1);
    setenv("ASAN_OPTIONS", "verify_asan_link_order=0", 1);
  }
  std::vector<char*> arguments;
  std::string program = "./benchleaf";
  arguments.push_back(program.data());
  std::vector<std::string> copies(words);
  for (std::string& word : copies) arguments.push_back(word.data());
  arguments.push_back(nullptr);
  execv(program.c_str(), arguments.data());
  _exit(123);
}

}  // namespace

Workshop::Workshop() {
  chmod(path().c_str(), 0755);
  fs::copy_file(BENCHLEAF_PROGRAM, path() / "benchleaf");
  std::ofstream(path() / "program.js") << "// stands for the program of the page\n";
  fs::copy("schema", path() / "schema", fs::copy_options::recursive);
  fs::copy("tests/cases/clean/content", path() / "content", fs::copy_options::recursive);
  set_edition("1");
}

Run Workshop::run(const std::vector<std::string>& words, const RunWith& with) const {
  const pid_t child = fork();
  if (child == 0) become(path(), words, with);
  int status = 0;
  waitpid(child, &status, 0);
  Run run;
  if (WIFEXITED(status)) run.code = WEXITSTATUS(status);
  if (WIFSIGNALED(status)) run.signal = WTERMSIG(status);
  run.err = bytes_of(path() / "stderr");
  fs::remove(path() / "stderr");
  if (with.keeps_data) run.out = bytes_of(path() / "stdout");
  return run;
}

Run Workshop::bind(const std::string& folder, const RunWith& with) const {
  return run({"bind", "--quiet", "--only", "html,facts", "--to", folder}, with);
}

void Workshop::set_edition(const std::string& edition) const {
  std::string head = bytes_of("tests/cases/handbook.yaml");
  const std::string said = "edition: \"1\"";
  head.replace(head.find(said), said.size(), "edition: \"" + edition + "\"");
  std::ofstream(path() / "content/handbook.yaml") << head;
  const std::string cell = bytes_of("tests/cases/clean/content/cell/sr754w.yaml");
  std::ofstream(path() / "content/cell/sr754w.yaml") << cell << "note: Edition " << edition << ".\n";
}

std::map<std::string, std::string> tree(const fs::path& folder) {
  std::map<std::string, std::string> files;
  for (const auto& entry : fs::recursive_directory_iterator(folder)) {
    std::string what = "folder";
    if (entry.is_symlink()) {
      what = "link " + fs::read_symlink(entry.path()).string();
    } else if (entry.is_regular_file()) {
      what = bytes_of(entry.path());
    }
    files.emplace(entry.path().lexically_relative(folder).string(), std::move(what));
  }
  return files;
}

std::string bytes_of(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

}  // namespace benchleaf::test
