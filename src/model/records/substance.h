#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "model/record.h"

namespace benchleaf::model {

/// A pure substance, or a mixture known by one number.
struct Substance : Record {
  struct Gas {
    RecordRef what;                       ///< `substance/ID`
    std::optional<base::Quantity> moles;  ///< of gas from one mole of this
  };
  /// One class of the classification of chemicals, from a concentration upwards where `from` is given.
  struct HazardClass {
    std::string name;       ///< `class`
    std::string statement;  ///< H314
    std::optional<base::Quantity> from;
    std::optional<base::Quantity> below;
  };

  std::vector<std::string> also_called;
  std::string cas;
  std::string index_number;
  std::string formula;
  std::optional<base::Quantity> molar_mass;
  std::optional<base::Quantity> density;
  std::optional<base::Quantity> boiling_point;
  std::optional<base::Quantity> flash_point;
  std::optional<base::Quantity> lower_limit;  ///< of explosion, in air
  std::optional<base::Quantity> upper_limit;
  std::vector<base::Quantity> acid_constants;  ///< pKa, the readable ones in file order
  std::optional<ActsAs> acts_as;
  std::optional<base::Quantity> equivalents;
  std::optional<Gas> gas;
  std::vector<HazardClass> classes;
};

}  // namespace benchleaf::model
