#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/span.h"
#include "read/source_text.h"
#include "report/finding.h"

namespace benchleaf::read {

/// What must hold before any parser sees the bytes of a file: no byte-order mark, UTF-8, no control character, no
/// carriage return inside a line. False where a finding was raised.
bool check_encoding(const SourceText& source, report::Findings& findings);

/// What a reader cannot see in a text, and where, in bytes.
struct CharacterFault {
  report::Rule rule;
  std::size_t place = 0;
  std::size_t bytes = 0;
  std::string message;
  std::string hint;
};

/// The first control or invisible character, word of mixed scripts, or letter apart from its accent in a text of UTF-8 that
/// has been decoded (escapes, entities); tabs and line feeds are neither.
std::optional<CharacterFault> find_character_fault(std::string_view text);

/// Looks for what a reader cannot see: invisible characters, words of mixed scripts, letters apart from their accents.
/// Each is a finding; the places come back, since the values that hold them cannot be used.
std::vector<base::Span> check_characters(const SourceText& source, report::Findings& findings);

/// What must hold of the lines of YAML: no tab in front of a line's first sign, no directive.
bool check_yaml_lines(const SourceText& source, report::Findings& findings);

}  // namespace benchleaf::read
