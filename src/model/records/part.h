#pragma once

#include <string>
#include <vector>

#include "model/record.h"

namespace benchleaf::model {

/// A part of a watch that a tool, a liquid or an abrasive meets.
struct Part : Record {
  std::vector<std::string> made_of;  ///< `material/ID`
  std::string where;
  std::string recognise;
  std::string if_damaged;
  std::string again;  ///< reuse, inspect, renew, never-remove
  std::string why_again;
  std::string care;
  std::vector<std::string> cautions;  ///< `caution/ID`
};

}  // namespace benchleaf::model
