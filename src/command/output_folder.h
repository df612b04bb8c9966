#pragma once

#include <signal.h>

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::command {

/// Holds back the signals that stop a run, from its making to its end; then they take effect.
class SignalsHeld {
 public:
  SignalsHeld();
  ~SignalsHeld();
  SignalsHeld(const SignalsHeld&) = delete;
  SignalsHeld& operator=(const SignalsHeld&) = delete;
  bool is_one_waiting() const;

 private:
  sigset_t held_;
  sigset_t before_;
};

/// Output that appears whole or not at all: everything is written into `DIR/.new-PID` and put in place entry by entry by
/// `commit`. Destroyed without a commit, it takes the new folder away again and leaves DIR as it was.
class OutputFolder {
 public:
  /// Makes DIR if it is missing, removes left-overs of runs that are no longer alive, and makes the new folder. `problem()`
  /// says what went wrong, if anything did; the other functions then do nothing.
  explicit OutputFolder(std::filesystem::path folder);
  ~OutputFolder();
  OutputFolder(const OutputFolder&) = delete;
  OutputFolder& operator=(const OutputFolder&) = delete;

  /// Writes one file; `name` may hold folders (`html/index.html`). False after a problem.
  bool write(const std::string& name, std::string_view bytes);
  /// Puts every written entry in its place, `MANIFEST` last. An older entry of the same name is exchanged for the new one in
  /// one step where the file system can; entries of other names stay. If one entry cannot be placed, those before it go back.
  /// A stop signal ends the run between two files, with DIR as it was, or waits until all entries are in their place.
  bool commit();

  const std::string& problem() const { return problem_; }
  /// Names written so far, in order.
  const std::vector<std::string>& names() const { return names_; }

 private:
  bool fail(const std::string& what, const std::filesystem::path& where, int error);
  void remove_left_overs();
  bool place(const std::string& entry);
  void take_back(const std::string& entry);

  SignalsHeld held_;  // the first member, so that the new folder is away before a signal ends the program
  std::filesystem::path folder_;
  std::filesystem::path fresh_;
  std::vector<std::string> names_;
  std::string problem_;
};

/// The last entry to be put in place: it vouches for the others.
inline constexpr std::string_view kManifestName = "MANIFEST";

}  // namespace benchleaf::command
