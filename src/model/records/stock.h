#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "model/record.h"

namespace benchleaf::model {

/// What lies in the drawer, for a ticket.
struct Stock : Record {
  struct Item {
    RecordRef item;  ///< `kind/id`
    std::optional<base::Quantity> size;
    std::string grade;
    int count = 0;
    std::string made;
    std::string place;
  };

  std::string date;
  std::vector<Item> items;
};

}  // namespace benchleaf::model
