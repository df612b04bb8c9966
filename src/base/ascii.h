#pragma once

#include <string>
#include <string_view>

namespace benchleaf::base {

// The C library asks the locale about these; numbers, units and ids must not.

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// The text with A to Z as a to z, everything else as it was.
inline std::string lower_ascii(std::string_view text) {
  std::string low(text);
  for (char& c : low) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return low;
}

/// Letters and digits in lower case; whatever lies between them, as one `parting`, and none at the ends.
inline std::string parted_words(std::string_view text, char parting) {
  std::string words;
  for (const char c : lower_ascii(text)) {
    const bool plain = is_digit(c) || (c >= 'a' && c <= 'z');
    if (plain) words += c;
    if (!plain && !words.empty() && words.back() != parting) words += parting;
  }
  if (!words.empty() && words.back() == parting) words.pop_back();
  return words;
}

/// The text without its spaces.
inline std::string without_spaces(std::string_view text) {
  std::string packed;
  for (const char c : text) {
    if (c != ' ') packed += c;
  }
  return packed;
}

}  // namespace benchleaf::base
