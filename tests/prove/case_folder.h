#pragma once

#include <filesystem>
#include <set>
#include <string>
#include <vector>

#include "support/temporary_folder.h"

namespace benchleaf::test {

/// One case of tests/cases: NAME/expect.txt, and its content as a tree in NAME/content, as parts of NAME/files.txt, or both.
struct Case {
  std::filesystem::path path;
  std::string findings;  ///< expect.txt: `exit N`, then the findings
  /// `pass RULE FILE` at the end of expect.txt: what stands in FILE (`-`: in the whole content) is just right for the rule.
  struct Pass {
    std::string rule;
    std::string file;
  };
  std::vector<Pass> passes;
};

/// All cases by name.
std::vector<Case> all_cases();

/// A case in a folder of its own beside the schema, so that every path is the same on every machine.
class CaseFolder {
 public:
  explicit CaseFolder(const Case& one);

  /// Exit code and findings of `check`, in the form of expect.txt.
  std::string check() const;
  /// `--overlay overlay` for each that the case brings.
  std::string overlays() const;
  /// Exit code of `bind --to FOLDER`.
  int bind(const std::string& folder) const;
  const std::filesystem::path& path() const { return folder_.path(); }

 private:
  TemporaryFolder folder_{"case"};
};

/// The bytes of a file.
std::string read_bytes(const std::filesystem::path& path);

}  // namespace benchleaf::test
