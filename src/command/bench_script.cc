// In: where the program lies. Out: the script of the calculators that was built with it.
#include "command/bench_script.h"

#include <filesystem>
#include <system_error>

#include "command/disk_files.h"

namespace benchleaf::command {

std::optional<std::string> bench_script(report::Findings& findings) {
  namespace fs = std::filesystem;
  std::error_code ignored;
  const fs::path folder = fs::read_symlink("/proc/self/exe", ignored).parent_path();
  const fs::path installed = folder.parent_path() / "share" / "benchleaf";
  for (const fs::path& place : {folder, installed}) {
    if (auto text = read_file(place / "bench.js")) return text;
  }
  findings.add(report::Rule::html_calculators, {}, "bench.js lies neither beside the program nor in " + installed.string(),
               "build the target bench-web, which needs Debian's package emscripten");
  return std::nullopt;
}

}  // namespace benchleaf::command
