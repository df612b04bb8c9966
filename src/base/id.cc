// In: a word that is not known and the words that are. Out: the one that was probably meant.
#include "base/id.h"

#include <algorithm>

#include "base/ascii.h"
#include "base/utf8.h"

namespace benchleaf::base {

namespace {

/// Slips in code points, two swapped neighbours counting one (the restricted form: no stretch is edited twice).
std::size_t slips_between(const std::u32string& one, const std::u32string& other) {
  const std::size_t width = other.size() + 1;
  std::vector<std::size_t> before(width), above(width), row(width);
  for (std::size_t j = 0; j < width; ++j) above.at(j) = j;
  for (std::size_t i = 1; i <= one.size(); ++i) {
    row.at(0) = i;
    for (std::size_t j = 1; j < width; ++j) {
      const std::size_t change = one.at(i - 1) == other.at(j - 1) ? 0 : 1;
      row.at(j) = std::min({above.at(j) + 1, row.at(j - 1) + 1, above.at(j - 1) + change});
      const bool swapped = i > 1 && j > 1 && one.at(i - 1) == other.at(j - 2) && one.at(i - 2) == other.at(j - 1);
      if (swapped) row.at(j) = std::min(row.at(j), before.at(j - 2) + 1);
    }
    std::swap(before, above);
    std::swap(above, row);
  }
  return above.back();
}

std::size_t allowed_slips(std::size_t letters) {
  if (letters <= 2) return 0;
  if (letters <= 4) return 1;
  return letters <= 8 ? 2 : 3;
}

}  // namespace

std::size_t edit_distance(std::string_view one, std::string_view other) {
  return slips_between(code_points(one), code_points(other));
}

std::string nearest_word(std::string_view word, const std::vector<std::string>& candidates) {
  const std::u32string meant = code_points(word);
  const std::string low = lower_ascii(word);
  std::size_t fewest = allowed_slips(meant.size()) + 1;
  const std::string* nearest = nullptr;
  for (const std::string& candidate : candidates) {
    if (lower_ascii(candidate) == low) return candidate;
    const std::u32string codes = code_points(candidate);
    const std::size_t apart = std::max(codes.size(), meant.size()) - std::min(codes.size(), meant.size());
    if (apart >= fewest) continue;  // also keeps a hostile, endless word from costing time
    const std::size_t slips = slips_between(meant, codes);
    if (slips >= fewest) continue;
    fewest = slips;
    nearest = &candidate;
  }
  return nearest == nullptr ? std::string() : *nearest;
}

std::string or_list(const std::vector<std::string>& words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (i > 0) text += i + 1 == words.size() ? " or " : ", ";
    text += words.at(i);
  }
  return text;
}

}  // namespace benchleaf::base
