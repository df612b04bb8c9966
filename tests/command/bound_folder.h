#pragma once

#include <sys/types.h>

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include "support/temporary_folder.h"

namespace benchleaf::test {

/// What became of one run of the program.
struct Run {
  int code = -1;    ///< exit code, or -1
  int signal = 0;   ///< the signal that ended it, or 0
  std::string out;  ///< where it was to be kept
  std::string err;
};

/// How a run is set about besides its words.
struct RunWith {
  std::string fault;       ///< BENCHLEAF_FAULT, with the fault library in front of libc; empty for none
  long largest_file = -1;  ///< limit of the size of one file in bytes, or none
  long memory = -1;        ///< limit of its address space in bytes, or none
  long seconds = -1;       ///< limit of its processor time, or none
  bool as_nobody = false;  ///< as a user who owns nothing, where the test itself may become one
  bool ignores_hang_up = false;
  bool keeps_data = false;  ///< keeps what it says on standard output
};

/// A folder with a tiny content, the schema and the program, all readable for everybody, to bind in.
class Workshop {
 public:
  Workshop();

  const std::filesystem::path& path() const { return folder_.path(); }
  /// Runs `benchleaf WORDS` there.
  Run run(const std::vector<std::string>& words, const RunWith& with = {}) const;
  /// `bind --to FOLDER` without the PDFs, which take most of the time of a run.
  Run bind(const std::string& folder, const RunWith& with = {}) const;
  /// Makes the content say something else, so that a new output differs from an old one in every entry.
  void set_edition(const std::string& edition) const;

 private:
  TemporaryFolder folder_{"faults"};
};

/// Every file and link below a folder by its path, with its bytes or where it leads; folders with `folder`.
std::map<std::string, std::string> tree(const std::filesystem::path& folder);

/// The bytes of a file.
std::string bytes_of(const std::filesystem::path& path);

}  // namespace benchleaf::test
