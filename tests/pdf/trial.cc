// In: display lists and commands. Out: files, and what other programs say about them.
#include "trial.h"

#include <sys/wait.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>

#include "pdf/writer.h"
#include "support/catch.h"

namespace benchleaf::pdf {

std::string written(const page::Document& document, const page::FontSet& fonts) {
  report::Findings findings;
  std::string bytes = write_pdf(document, fonts, {read_test_profile()}, findings);
  for (const report::Finding& finding : findings.all()) FAIL_CHECK(report::rule_info(finding.rule).id << ": " << finding.message);
  return bytes;
}

TrialFile::TrialFile(const std::string& bytes) {
  path_ = (folder_.path() / "trial.pdf").string();
  std::ofstream(path_, std::ios::binary) << bytes;
}

Printed run(const std::string& command) {
  Printed printed;
  std::FILE* pipe = popen(("LC_ALL=C.UTF-8 " + command + " 2>&1").c_str(), "r");
  if (pipe == nullptr) throw std::runtime_error("no pipe");
  std::array<char, 4096> chunk{};
  while (const std::size_t read = std::fread(chunk.data(), 1, chunk.size(), pipe)) printed.text.append(chunk.data(), read);
  printed.code = WEXITSTATUS(pclose(pipe));
  return printed;
}

std::vector<std::string> lines_from(const std::string& command) {
  const Printed printed = run(command);
  INFO(command << ": " << printed.text);
  CHECK(printed.code == 0);
  std::vector<std::string> lines;
  std::istringstream stream(printed.text);
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

}  // namespace benchleaf::pdf
