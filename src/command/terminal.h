#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "base/span.h"
#include "command/options.h"
#include "report/finding.h"

namespace benchleaf::command {

/// Where a command speaks: data to stdout, findings and the one progress line to stderr.
class Terminal {
 public:
  /// Colour by the choice, the environment (NO_COLOR) and whether stderr is a terminal.
  explicit Terminal(const CommonOptions& options);

  void data(std::string_view text);
  /// Columns that data may take: COLUMNS of the environment, else those of the terminal, else 100.
  std::size_t width() const;
  /// Sorts and prints errors and warnings; notes with --notes.
  void findings(report::Findings& findings, const base::FileTable& files);
  /// How many errors, warnings and notes there are, and how to see notes that were not printed.
  std::string count(const report::Findings& findings) const;
  /// `benchleaf: TEXT`, unless the user wants quiet.
  void progress(const std::string& text);
  /// `benchleaf: TEXT`; gives back the exit code of a run that could not do its work.
  int failure(const std::string& text);
  /// The exit code, or that of a failure if stdout or stderr did not take what was written.
  int finish(int exit_code);

 private:
  bool color_ = false;
  bool quiet_ = false;
  bool notes_ = false;
};

}  // namespace benchleaf::command
