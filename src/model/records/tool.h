#pragma once

#include <string>
#include <vector>

#include "model/record.h"

namespace benchleaf::model {

/// A tool of the bench.
struct Tool : Record {
  std::string use;
  std::string instead;
  std::string size;
  RecordRef touches;  ///< `material/ID`, or empty
  std::string check;
  std::vector<std::string> works;  ///< ways of working that it brings into a step
  References cautions;             ///< `caution/ID`
};

}  // namespace benchleaf::model
