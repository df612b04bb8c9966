#pragma once

#include "read/source_text.h"
#include "report/finding.h"

namespace benchleaf::read {

/// What must hold before any parser sees the bytes of a record or page: no byte-order mark, UTF-8, no control character,
/// no lone carriage return, no invisible character, no word of mixed scripts, composed letters (NFC). False where a
/// finding was raised.
bool check_characters(const SourceText& source, report::Findings& findings);

/// What must hold of the lines of YAML: no tab in front of a line's first sign, no directive.
bool check_yaml_lines(const SourceText& source, report::Findings& findings);

}  // namespace benchleaf::read
