#pragma once

#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "report/finding.h"

namespace benchleaf::page {

/// Where English words may be parted, by the patterns of a dictionary of libhyphen.
class Hyphenator {
 public:
  /// From the bytes of a dictionary in UTF-8 (`hyph_en_GB.dic`). Bytes that are none are a finding; the hyphenator then
  /// parts no word.
  static Hyphenator open(const std::string& bytes, report::Findings& findings);
  Hyphenator(Hyphenator&&) noexcept;
  Hyphenator& operator=(Hyphenator&&) noexcept;
  ~Hyphenator();

  /// Byte offsets, ascending, at which a hyphen may be put into a word of letters: at least two letters before and three
  /// after. None for words with anything but letters, of capitals alone, or of more than 60 letters.
  std::vector<std::size_t> breaks(std::string_view word) const;

 private:
  struct Dictionary;
  explicit Hyphenator(std::unique_ptr<Dictionary> dictionary);
  std::unique_ptr<Dictionary> dictionary_;
};

}  // namespace benchleaf::page
