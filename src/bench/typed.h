#pragma once

#include <string>
#include <variant>

#include "base/quantity.h"
#include "model/fact.h"
#include "model/tables.h"

namespace benchleaf::bench {

/// A quantity as people type it.
struct Typed {
  std::variant<base::Quantity, base::QuantityError> read;
  std::string note;                          ///< how it was taken where that was not written: `31.85 was taken as 31.85 mm`
  std::string fact;                          ///< the factor of the table everyday-units that it was turned by, or empty
  model::Trust trust = model::Trust::given;  ///< of that factor
};

/// Reads `31.85mm`, `.31 in`, `+0.5 s/d`, a minus of any kind, the units of the table everyday-units (`35 C`, `3 ATM`), and a
/// plain number as one of the usual unit.
Typed read_typed(const std::string& text, base::Unit usual, const model::Tables& tables);

}  // namespace benchleaf::bench
