#pragma once

#include <filesystem>
#include <functional>
#include <map>
#include <string>
#include <string_view>

#include "command/folder_lock.h"
#include "command/signals_held.h"

namespace benchleaf::command {

/// The folder in DIR that a bound handbook replaces, and the file in it that vouches for the others; the folders of tickets and
/// of labels.
inline constexpr std::string_view kBookFolder = "handbook";
inline constexpr std::string_view kManifestName = "MANIFEST";
inline constexpr std::string_view kTicketFolder = "tickets";
inline constexpr std::string_view kLabelFolder = "labels";

/// Output that appears whole or not at all: everything is written into a new folder beside DIR/NAME, and `commit` exchanges the
/// two in one step. Destroyed without a commit, it takes the new folder away again and leaves DIR as it was. Where DIR/NAME is a
/// link to a folder, that folder is replaced and the link stays.
class OutputFolder {
 public:
  /// Makes DIR if it is missing, and the new folder. `problem()` says what went wrong, if anything did; the other functions then
  /// do nothing.
  explicit OutputFolder(std::filesystem::path folder, std::string_view name = kBookFolder);
  ~OutputFolder();
  OutputFolder(const OutputFolder&) = delete;
  OutputFolder& operator=(const OutputFolder&) = delete;

  /// Writes one file; `name` may hold folders (`html/index.html`). False after a problem.
  bool write(const std::string& name, std::string_view bytes);
  /// Waits until no other run is writing here, puts back what a run that died had set aside, and takes away what dead runs left.
  /// From then to the end the old output cannot change under this run's eyes.
  bool claim();
  /// After `claim`: the bytes of a file of the old output, or empty.
  std::string old_bytes(const std::string& name) const;
  /// Puts what was written in place of DIR/NAME. Files of the old folder that were not written anew go with it, a user's own at
  /// any depth too, but those that `drops` names. A stop signal ends the run between two files, with DIR as it was, or waits
  /// until the new folder is in place.
  bool commit(const std::function<bool(const std::string& name)>& drops = {});

  const std::string& problem() const { return problem_; }

 private:
  bool fail(const std::string& what, const std::filesystem::path& where, int error);
  bool follow_link();
  void make_fresh();
  void put_back();
  void remove_left_overs();
  bool carry_over(const std::function<bool(const std::string&)>& drops);
  bool carry_over(const std::filesystem::path& entry, const std::filesystem::path& to);
  bool make_durable();
  bool put_in_place();

  SignalsHeld held_;  // the first member, so that the new folder is away before a signal ends the program
  FolderLock lock_;
  std::filesystem::path folder_;  // in which the output is exchanged
  std::filesystem::path place_;   // the output itself
  std::filesystem::path fresh_;
  FileLock alive_;  // on the new folder: tells other runs that this one lives
  std::string problem_;
  bool claimed_ = false;
};

}  // namespace benchleaf::command
