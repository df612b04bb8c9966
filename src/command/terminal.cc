// In: what commands have to say. Out: stdout and stderr. The only place that writes to either.

#include "command/terminal.h"

#include <unistd.h>

#include <cstdio>
#include <cstdlib>

#include "report/print.h"

namespace benchleaf::command {
namespace {

void write_to(std::FILE* stream, std::string_view text) { std::fwrite(text.data(), 1, text.size(), stream); }

bool wants_no_color() {
  const char* no_color = std::getenv("NO_COLOR");
  return no_color != nullptr && *no_color != '\0';
}

}  // namespace

Terminal::Terminal(ColorChoice color, bool quiet) : quiet_(quiet) {
  if (color == ColorChoice::always) color_ = true;
  if (color == ColorChoice::when_terminal) color_ = isatty(STDERR_FILENO) == 1 && !wants_no_color();
}

void Terminal::data(std::string_view text) { write_to(stdout, text); }

void Terminal::findings(report::Findings& findings, const base::FileTable& files) {
  findings.sort(files);
  write_to(stderr, report::findings_text(findings, files, color_));
}

void Terminal::progress(const std::string& text) {
  if (!quiet_) write_to(stderr, "benchleaf: " + text + "\n");
}

int Terminal::failure(const std::string& text) {
  write_to(stderr, "benchleaf: " + text + "\n");
  return kExitUsage;
}

int Terminal::finish(int exit_code) {
  const bool written = std::fflush(stdout) == 0 && std::ferror(stdout) == 0;
  return written ? exit_code : failure("cannot write to standard output");
}

}  // namespace benchleaf::command
