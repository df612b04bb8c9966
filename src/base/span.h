#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::base {

/// Index into a FileTable; -1 where a finding belongs to no file.
using FileId = int;
inline constexpr FileId kNoFile = -1;

/// A stretch of one source line. Line and column count from 1, column and length in code points; line 0 means "the whole file".
struct Span {
  FileId file = kNoFile;
  int line = 0;
  int column = 0;
  int length = 0;

  friend bool operator==(const Span&, const Span&) = default;
};

/// The files that were read, in reading order: the path as a user writes it, and the text for quoting a line.
class FileTable {
 public:
  /// Adds a file and gives its id. Nothing is read here; the caller brings the text.
  FileId add(std::string shown_path, std::string text);

  const std::string& path(FileId file) const;
  const std::string& text(FileId file) const;
  /// The line without its line end, or an empty string past the end of the file.
  std::string line(FileId file, int line) const;
  int size() const { return static_cast<int>(files_.size()); }

 private:
  struct File {
    std::string path;
    std::string text;
  };
  std::vector<File> files_;
};

}  // namespace benchleaf::base
