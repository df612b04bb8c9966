#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace benchleaf::base {

/// One code point, or one ill-formed stretch (then `valid` is false and `code` is U+FFFD).
struct Utf8Step {
  char32_t code = U'\uFFFD';
  std::size_t length = 1;  ///< bytes taken, at least 1
  bool valid = false;
};

/// Reads the code point at byte `at`, which must lie below the size. An ill-formed stretch ends where the Unicode
/// Standard says a replacement is due: after its longest well-formed beginning, at least one byte.
Utf8Step next_code_point(std::string_view text, std::size_t at);

/// Byte offset of the first ill-formed stretch, or nothing for well-formed UTF-8.
std::optional<std::size_t> first_invalid_utf8(std::string_view text);

/// All code points; each ill-formed stretch becomes U+FFFD.
std::u32string code_points(std::string_view text);
/// The bytes of one code point; what is no Unicode scalar value becomes U+FFFD.
std::string to_utf8(char32_t code);
std::string to_utf8(std::u32string_view codes);

/// Number of code points; an ill-formed stretch counts as one.
std::size_t count_code_points(std::string_view text);
/// Column of a byte of a line, from 1, in code points; an offset past the end gives the column after the last character.
int column_of(std::string_view line, std::size_t offset);

/// Columns a terminal gives to the text: none for combining marks and controls, two for East Asian wide characters, else one.
int display_width(std::string_view text);

// The next three rest on utf8proc and are not in the browser's build.

/// Whether a text is in Normalisation Form C; ill-formed UTF-8 is not.
bool is_nfc(std::string_view text);
/// The text in Normalisation Form C; ill-formed UTF-8 comes back as it was.
std::string to_nfc(std::string_view text);
/// For search and index: case folded, compatibility forms opened, marks taken off (`Öl` to `ol`, `µm` to `μm` with the
/// Greek letter). Ill-formed UTF-8 comes back as it was.
std::string fold(std::string_view text);

}  // namespace benchleaf::base
