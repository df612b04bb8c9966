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

Terminal::Terminal(const CommonOptions& options) : quiet_(options.quiet), notes_(options.notes) {
  if (options.color == ColorChoice::always) color_ = true;
  if (options.color == ColorChoice::when_terminal) color_ = isatty(STDERR_FILENO) == 1 && !wants_no_color();
}

void Terminal::data(std::string_view text) { write_to(stdout, text); }

void Terminal::findings(report::Findings& findings, const base::FileTable& files) {
  findings.sort(files);
  write_to(stderr, report::findings_text(findings, files, {color_, notes_}));
}

std::string Terminal::count(const report::Findings& findings) const {
  const bool hidden = !notes_ && findings.count(report::Severity::note) > 0;
  return report::count_text(findings) + (hidden ? " (see notes with --notes)" : "");
}

void Terminal::progress(const std::string& text) {
  if (!quiet_) write_to(stderr, "benchleaf: " + report::printable_line(text) + "\n");
}

int Terminal::failure(const std::string& text) {
  write_to(stderr, "benchleaf: " + report::printable_line(text) + "\n");
  return kExitUsage;
}

int Terminal::finish(int exit_code) {
  const bool told = std::fflush(stderr) == 0 && std::ferror(stderr) == 0;
  const bool written = std::fflush(stdout) == 0 && std::ferror(stdout) == 0;
  if (!written) return failure("cannot write to standard output");
  return told ? exit_code : kExitUsage;
}

}  // namespace benchleaf::command
