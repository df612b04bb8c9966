#pragma once

#include <string>
#include <vector>

#include "slips/slip.h"

namespace benchleaf::test {

/// Slips that no rule could know, with the sentence that says why.
struct OpenField {
  std::string kinds;   ///< names of kinds of slips parted by `, `, or `*`
  std::string fields;  ///< `cell capacity.value` and others parted by `, `; `*` stands for any stretch
  std::string reason;

  bool covers(const Slip& slip) const;
};

/// The lines of tests/slips/open_fields.txt.
std::vector<OpenField> open_fields();

}  // namespace benchleaf::test
