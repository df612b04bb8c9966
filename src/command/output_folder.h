#pragma once

#include <signal.h>

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

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

/// The folder in DIR that a bound handbook replaces, and the file in it that vouches for the others; the folder of the tickets.
inline constexpr std::string_view kBookFolder = "handbook";
inline constexpr std::string_view kManifestName = "MANIFEST";
inline constexpr std::string_view kTicketFolder = "tickets";

/// Output that appears whole or not at all: everything is written into `DIR/.new-PID`, and `commit` exchanges that folder for
/// `DIR/NAME` in one step. Destroyed without a commit, it takes the new folder away again and leaves DIR as it was.
class OutputFolder {
 public:
  /// Makes DIR if it is missing, removes left-overs of runs that are no longer alive, and makes the new folder. `problem()`
  /// says what went wrong, if anything did; the other functions then do nothing.
  explicit OutputFolder(std::filesystem::path folder, std::string_view name = kBookFolder);
  ~OutputFolder();
  OutputFolder(const OutputFolder&) = delete;
  OutputFolder& operator=(const OutputFolder&) = delete;

  /// Writes one file; `name` may hold folders (`html/index.html`). False after a problem.
  bool write(const std::string& name, std::string_view bytes);
  /// Puts what was written in place of DIR/NAME. Entries of the old folder that were not written anew, a user's own too,
  /// go with it. A stop signal ends the run between two files, with DIR as it was, or waits until the new folder is in place.
  bool commit();

  const std::string& problem() const { return problem_; }

 private:
  bool fail(const std::string& what, const std::filesystem::path& where, int error);
  void remove_left_overs();
  bool carry_over();
  bool carry_over(const std::filesystem::path& entry);
  bool put_in_place();

  SignalsHeld held_;  // the first member, so that the new folder is away before a signal ends the program
  std::filesystem::path folder_;
  std::filesystem::path place_;  // DIR/NAME
  std::filesystem::path fresh_;
  std::string problem_;
};

}  // namespace benchleaf::command
