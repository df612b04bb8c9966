#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "model/record.h"
#include "model/records/chemistry.h"

namespace benchleaf::model {

/// What a leaked cell or an old repair leaves behind.
struct Residue : Record {
  struct Share {
    std::string substance;  ///< `substance/ID`
    std::optional<base::Quantity> share;
  };

  std::string short_name;            ///< for a chart
  std::vector<std::string> left_by;  ///< systems of cells, as in the table cell-systems
  std::vector<Share> made_of;
  std::string looks;
  std::vector<std::string> colours;  ///< white, grey, green, black, brown, oily
  std::string side;                  ///< alkaline, acidic, neutral, organic, not known
  std::vector<std::string> answers;  ///< `chemistry/ID`
  std::string why;
  bool stays = false;  ///< whether a rinse leaves it where it is
  std::vector<Meeting> meets;
  std::vector<std::string> cautions;  ///< `caution/ID`
};

}  // namespace benchleaf::model
