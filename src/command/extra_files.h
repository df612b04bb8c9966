#pragma once

#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "command/disk_files.h"

namespace benchleaf::command {

/// A content folder with files of elsewhere laid over it: `watch/ID.yaml` by the file that the user named. Such a file is shown
/// by the name the user gave, and stands in the place of a record of the same id.
class ExtraFiles final : public read::FileSource {
 public:
  ExtraFiles(std::filesystem::path content, std::map<std::string, std::filesystem::path> extra)
      : content_(std::move(content)), extra_(std::move(extra)) {}
  std::optional<std::vector<read::FileEntry>> list() const override;
  std::optional<std::string> read(const std::string& path) const override;
  std::string shown(const std::string& path) const override;

 private:
  DiskFiles content_;
  std::map<std::string, std::filesystem::path> extra_;  ///< by path below the content
};

/// The folder of an overlay, without the records that the user named files for.
class OverlayFiles final : public read::FileSource {
 public:
  OverlayFiles(std::filesystem::path folder, const std::map<std::string, std::filesystem::path>& named);
  std::optional<std::vector<read::FileEntry>> list() const override;
  std::optional<std::string> read(const std::string& path) const override { return folder_.read(path); }
  std::string shown(const std::string& path) const override { return folder_.shown(path); }

 private:
  DiskFiles folder_;
  std::set<std::string> named_;  ///< paths below the folder
};

}  // namespace benchleaf::command
