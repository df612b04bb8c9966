#pragma once

#include <string>
#include <vector>

#include "support/temporary_folder.h"
#include "trial_book.h"

namespace benchleaf::pdf {

/// Writes the display list; every finding is a failure of the test.
std::string written(const page::Document& document, const page::FontSet& fonts);

/// A file in a folder of its own that goes with the object.
class TrialFile {
 public:
  explicit TrialFile(const std::string& bytes);
  const std::string& path() const { return path_; }

 private:
  test::TemporaryFolder folder_{"pdf"};
  std::string path_;
};

/// All that a program prints on either stream, and its exit code.
struct Printed {
  std::string text;
  int code = 0;
};
Printed run(const std::string& command);

/// The same, line by line, for programs that must succeed.
std::vector<std::string> lines_from(const std::string& command);

}  // namespace benchleaf::pdf
