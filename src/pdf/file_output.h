#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "pdf/syntax.h"

namespace benchleaf::pdf {

/// A PDF 1.4 file while it is written: header, objects in any order, classic cross-reference table, trailer.
class FileOutput {
 public:
  FileOutput();

  /// Starts the object; its value is then appended to bytes().
  void begin(ObjectNumber number);
  void end();
  std::string& bytes() { return bytes_; }
  /// Sets memory aside for what is to come, so that nothing is copied while it grows.
  void reserve(std::size_t bytes, ObjectNumber objects) {
    bytes_.reserve(bytes);
    offsets_.reserve(static_cast<std::size_t>(objects));
  }

  struct Trailer {
    ObjectNumber root = 0;
    ObjectNumber info = 0;
    std::string_view id;  ///< 32 hexadecimal digits
  };
  /// Closes the file and gives it away. A number that was never begun becomes a free entry.
  std::string finish(const Trailer& trailer);

 private:
  void append_table();

  std::string bytes_;
  std::vector<std::size_t> offsets_;  ///< by object number; 0 for none
};

}  // namespace benchleaf::pdf
