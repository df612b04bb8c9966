#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "base/span.h"
#include "read/file_start.h"

namespace benchleaf::read {

/// The bytes of one file, or of a stretch of its lines, and where they stand in it. Turns byte places, which the parsers
/// count, into lines and columns in code points, which people and editors count.
class SourceText {
 public:
  /// `first_line` is the line of the file that the first byte of `text` begins. `text` must outlive this object.
  SourceText(std::string_view text, base::FileId file, int first_line = 1);

  std::string_view text() const { return text_; }
  base::FileId file() const { return file_; }
  /// Span of `bytes` bytes from `place`, cut at the end of its line. A place past the end is the end.
  base::Span span(std::size_t place, std::size_t bytes) const;
  /// Index of the line (from 0) in this text, and the place where that line begins.
  std::size_t line_index(std::size_t place) const;
  std::size_t line_start(std::size_t index) const { return starts_.at(index); }
  std::size_t line_count() const { return starts_.size(); }
  /// The line without its line end.
  std::string_view line(std::size_t index) const;
  base::Span whole_file() const { return start_of(file_); }

 private:
  /// Code points in front of a place.
  std::size_t code_points_before(std::size_t place) const;

  std::string_view text_;
  base::FileId file_;
  int first_line_;
  std::vector<std::size_t> starts_;
  std::vector<std::size_t> counts_;  ///< code points before each stretch of kStretch bytes
};

}  // namespace benchleaf::read
