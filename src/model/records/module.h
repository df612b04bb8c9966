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

  std::string display;  ///< lcd, led, hands
  std::string lamp;     ///< none, filament-lamp, led, electroluminescent-panel, tritium, display-itself
  std::string recognise;
  std::string era;
  int cell_count = 0;
  std::string wiring;              ///< single, series, parallel, not known
  std::vector<std::string> cells;  ///< `cell/ID`
  std::optional<base::Quantity> supply;
  std::vector<Load> loads;
  std::vector<std::string> joined;  ///< clip, screw, heat-stake, solder, cement
  std::string contact;              ///< zebra-strip, pin-and-solder, spring-contacts, ribbon, none, or empty
  std::string reset;
  std::vector<std::string> parts;  ///< `part/ID`
  std::string healthy;
  std::vector<std::string> cautions;  ///< `caution/ID`
};

}  // namespace benchleaf::model
