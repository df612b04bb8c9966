// In: what commands have to say. Out: stdout and stderr. The only place that writes to either.

#include "command/terminal.h"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <optional>

#include "report/print.h"

namespace benchleaf::command {
namespace {

void write_to(std::FILE* stream, std::string_view text) { std::fwrite(text.data(), 1, text.size(), stream); }

bool wants_no_color() {
  const char* no_color = std::getenv("NO_COLOR");
  return no_color != nullptr && *no_color != '\0';
}

constexpr std::size_t kWidth = 100;
constexpr std::size_t kNarrowest = 30;

std::optional<std::size_t> columns_of_environment() {
  const char* text = std::getenv("COLUMNS");
  const long columns = text == nullptr ? 0 : std::strtol(text, nullptr, 10);
  return columns > 0 ? std::optional(static_cast<std::size_t>(columns)) : std::nullopt;
}

}  // namespace

Terminal::Terminal(const CommonOptions& options) : quiet_(options.quiet), notes_(options.notes) {
  if (options.color == ColorChoice::always) color_ = true;
  if (options.color == ColorChoice::when_terminal) color_ = isatty(STDERR_FILENO) == 1 && !wants_no_color();
}

std::size_t Terminal::width() const {
  if (const auto columns = columns_of_environment()) return std::max(*columns, kNarrowest);
  winsize size{};
  const bool known = isatty(STDOUT_FILENO) == 1 && ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col > 0;
  return known ? std::max<std::size_t>(size.ws_col, kNarrowest) : kWidth;
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
