#pragma once

#include <string>
#include <vector>

#include "model/record.h"

namespace benchleaf::model {

/// What the watch shows, and what it may mean.
struct Symptom : Record {
  struct Cause {
    std::string cause;
    std::string test;
    std::string cure;
    RecordRef procedure;  ///< `procedure/ID`, or empty
    std::string stop;     ///< where to stop and whom to ask, or empty
  };

  std::vector<Display> shown_by;
  std::string looks;
  std::vector<Cause> causes;
  std::vector<std::string> never;
};

}  // namespace benchleaf::model
