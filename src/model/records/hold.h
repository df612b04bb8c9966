#pragma once

#include <string>
#include <vector>

#include "model/marks.h"
#include "model/record.h"

namespace benchleaf::model {

/// What must be known or done before certain jobs may be begun.
struct Hold : Record {
  std::vector<Condition> when;      ///< any of these
  std::vector<std::string> stages;  ///< of jobs that it keeps back
  std::vector<std::string> roles;   ///< the same by role
  References procedures;            ///< `procedure/ID`: the same by name
  References but;                   ///< `procedure/ID`: not kept back all the same
  std::string because;
  std::string until;    ///< what frees the jobs
  References cautions;  ///< `caution/ID`: what must be known meanwhile
};

}  // namespace benchleaf::model
