#pragma once

#include <string>
#include <vector>

#include "model/record.h"

namespace benchleaf::model {

/// A part of a watch that a tool, a liquid or an abrasive meets.
struct Part : Record {
  /// A way of working that it does not bear.
  struct Limit {
    std::string never;
    std::string why;
  };

  References made_of;  ///< `material/ID`
  std::string role;    ///< what it stands for on any watch: case, crystal, loose-crystal, lume, ...; or empty
  std::string where;
  std::string recognise;
  std::string if_damaged;
  std::optional<Again> again;
  std::string why_again;
  std::string care;
  bool seam = false;  ///< whether a liquid on it creeps to whatever is inside
  std::vector<Limit> limits;
  References cautions;  ///< `caution/ID`
};

}  // namespace benchleaf::model
