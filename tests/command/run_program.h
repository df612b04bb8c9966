// In: words of a command line. Out: what the program did with them.
#pragma once

#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

namespace benchleaf::test {

struct Ran {
  int code = -1;  ///< exit code, or -1 where a signal ended it
  std::string out;
  std::string err;
};

/// The bytes of a file.
inline std::string text_of(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

/// Runs `ENVIRONMENT PROGRAM WORDS` in a folder, words as a shell reads them; what it says is kept in files there.
inline Ran run_program(const std::filesystem::path& folder, const std::string& words, const std::string& environment = {},
                       const std::string& program = BENCHLEAF_PROGRAM) {
  const std::string command =
      "cd '" + folder.string() + "' && " + environment + " '" + program + "' " + words + " >stdout 2>stderr";
  const int status = std::system(command.c_str());
  return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, text_of(folder / "stdout"), text_of(folder / "stderr")};
}

}  // namespace benchleaf::test
