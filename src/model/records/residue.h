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
    RecordRef substance;  ///< `substance/ID`
    std::optional<base::Quantity> share;
  };

  std::string short_name;            ///< for a chart
  std::vector<std::string> left_by;  ///< systems of cells, as in the table cell-systems
  std::vector<Share> made_of;
  std::string looks;
  std::vector<Colour> colours;
  std::optional<Side> side;
  References answers;  ///< `chemistry/ID`
  std::string why;
  bool stays = false;  ///< whether a rinse leaves it where it is
  std::vector<Meeting> meets;
  References cautions;  ///< `caution/ID`
};

}  // namespace benchleaf::model
