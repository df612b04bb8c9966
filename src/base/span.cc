// In: files that were read. Out: their paths and lines, for findings that quote them.
#include "base/span.h"

#include <utility>

namespace benchleaf::base {

FileId FileTable::add(std::string shown_path, std::string text) {
  files_.push_back({std::move(shown_path), std::move(text)});
  return static_cast<FileId>(files_.size()) - 1;
}

const std::string& FileTable::path(FileId file) const { return files_.at(static_cast<std::size_t>(file)).path; }

const std::string& FileTable::text(FileId file) const { return files_.at(static_cast<std::size_t>(file)).text; }

std::string FileTable::line(FileId file, int line) const {
  if (line < 1) return {};
  const std::string& all = text(file);
  std::size_t start = 0;
  for (int passed = 1; passed < line; ++passed) {
    const std::size_t end = all.find('\n', start);
    if (end == std::string::npos) return {};
    start = end + 1;
  }
  std::string found = all.substr(start, all.find('\n', start) - start);
  if (!found.empty() && found.back() == '\r') found.pop_back();
  return found;
}

}  // namespace benchleaf::base
