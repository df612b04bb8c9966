#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "model/record.h"
#include "model/records/gasket.h"

namespace benchleaf::model {

/// A kind of watch crystal: material, form and the way it is held.
struct Crystal : Record {
  RecordRef material;  ///< `material/ID`
  std::optional<CrystalForm> form;
  std::optional<Fixing> fixing;
  std::optional<SizeRange> sizes;
  std::optional<base::Quantity> thickness;
  std::optional<base::Quantity> oversize;
  std::string recognise;
  std::string remove;
  std::string fit;
  std::optional<Polish> polish;
  References grades;    ///< `abrasive/ID`
  References cautions;  ///< `caution/ID`
};

}  // namespace benchleaf::model
