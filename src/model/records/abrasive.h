#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "model/record.h"
#include "model/records/chemistry.h"

namespace benchleaf::model {

/// A scale by which abrasives are graded.
struct Abrasive : Record {
  struct Grade {
    std::string grade;  ///< P1200
    std::optional<base::Quantity> median;
    std::optional<base::Quantity> tolerance;
    std::optional<base::Quantity> largest;
  };

  std::string scale;
  std::optional<AbrasiveForm> form;
  std::string standard;
  std::string mark;
  std::vector<Grade> grades;
  std::vector<OnMaterial> on_materials;
  std::string uses;
  std::string not_to_confuse;
};

}  // namespace benchleaf::model
