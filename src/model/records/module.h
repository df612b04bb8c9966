#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "model/record.h"

namespace benchleaf::model {

/// The works of an electronic watch.
struct Module : Record {
  /// One state in which the module draws current.
  struct Load {
    std::string state;
    std::optional<base::Quantity> current;
    std::optional<base::Quantity> duration;  ///< `for`
    std::optional<base::Quantity> per_day;
  };

  std::optional<Display> display;
  std::optional<Lamp> lamp;
  std::string recognise;
  std::string era;
  int cell_count = 0;
  std::optional<Wiring> wiring;
  References cells;  ///< `cell/ID`
  std::optional<base::Quantity> supply;
  std::vector<Load> loads;
  std::vector<Joint> joined;
  std::optional<Contact> contact;
  std::string charging;  ///< what charges the cell: none, light, motion; empty where the record is silent
  std::string reset;
  References parts;  ///< `part/ID`
  std::string healthy;
  References cautions;  ///< `caution/ID`
};

}  // namespace benchleaf::model
