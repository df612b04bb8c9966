#pragma once

#include <filesystem>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace benchleaf::command {

/// The history of the folder of records, asked of git; without git, or outside a repository, it knows nothing. Only what lists
/// names is called: nothing of the repository is run, and nothing in it is changed.
class Git {
 public:
  explicit Git(std::filesystem::path folder);

  /// Whether the folder lies in a repository, and git is installed.
  bool answers() const { return !root_.empty(); }

  /// The files that differ from a commit or are not in it, as canonical paths; nothing where there is no such commit.
  std::optional<std::set<std::filesystem::path>> changed_since(const std::string& commit) const;

  /// Whether the first of two files was changed after the second: not committed yet, or in a later commit. Nothing where git
  /// cannot tell, as when one commit brought both.
  std::optional<bool> is_newer(const std::filesystem::path& one, const std::filesystem::path& other) const;

 private:
  std::optional<std::vector<std::string>> ask(std::vector<std::string> words) const;
  std::optional<std::string> last_commit(const std::filesystem::path& file) const;
  bool is_committed(const std::filesystem::path& file) const;

  std::filesystem::path folder_;
  std::filesystem::path root_;  ///< of the repository, or empty
};

}  // namespace benchleaf::command
