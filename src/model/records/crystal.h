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
  std::string material;  ///< `material/ID`
  std::string form;      ///< round-domed, round-flat, rectangular, shaped
  std::string fixing;    ///< press-fit, tension-ring, gasket, cemented
  std::optional<SizeRange> sizes;
  std::optional<base::Quantity> thickness;
  std::optional<base::Quantity> oversize;
  std::string recognise;
  std::string remove;
  std::string fit;
  std::string polish;                 ///< yes, limited, no
  std::vector<std::string> grades;    ///< `abrasive/ID`
  std::vector<std::string> cautions;  ///< `caution/ID`
};

}  // namespace benchleaf::model
