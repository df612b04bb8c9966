#pragma once

#include <optional>
#include <string>

#include "base/quantity.h"
#include "model/record.h"

namespace benchleaf::model {

/// A button or coin cell. `title` is the designation.
struct Cell : Record {
  struct Size {
    std::optional<base::Quantity> diameter;
    std::optional<base::Quantity> height;
  };
  struct Capacity {
    std::optional<base::Quantity> value;
    std::string load;  ///< as written: `15 kΩ`, `not stated`
  };

  std::string designation;      ///< SR754W
  std::string short_form;       ///< SR48 (`short`), or empty
  std::string trade_number;     ///< 393, or empty
  std::string consumer_number;  ///< AG5, or empty
  std::string system;           ///< id in the table cell-systems: silver-oxide
  int cells_in_series = 1;
  Size size;
  std::optional<base::Quantity> nominal;
  std::optional<Drain> drain;
  std::optional<Capacity> capacity;
  std::optional<base::Quantity> mass;
  std::optional<Electrolyte> electrolyte;
  CellStatus status = CellStatus::current;  ///< current where the record says nothing
  std::string uses;
};

}  // namespace benchleaf::model
