#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "model/record.h"

namespace benchleaf::model {

/// What a part is made of, as far as cleaning, sealing and polishing ask.
struct Material : Record {
  std::optional<MaterialFamily> family;  ///< `kind`
  std::string short_name;
  std::vector<std::string> also_called;
  std::string found_in;
  std::string recognise;
  std::string scratches;  ///< `signs`: soft, hard; of a crystal
  std::string feels;      ///< warm, cool
  std::optional<base::Quantity> density;
  std::optional<base::Quantity> modulus;
  std::optional<base::Quantity> poisson;
  std::optional<base::Quantity> strength;
  std::optional<base::Quantity> safety_factor;
  std::string hardness;
  std::optional<base::Quantity> refractive_index;
  std::optional<base::Quantity> conducts_heat;
  std::optional<base::Quantity> softens;
  std::optional<base::Quantity> service;
  std::optional<base::Quantity> shelf_life;
  std::optional<base::Quantity> layer;
  std::string care;
  References cautions;  ///< `caution/ID`
};

}  // namespace benchleaf::model
