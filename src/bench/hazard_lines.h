#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bench/calculator.h"
#include "standards/mixture.h"

namespace benchleaf::bench {

/// The classes of a substance, and what they rest on.
struct KnownHazards {
  std::vector<standards::HazardLine> lines;
  double m_acute = 1;
  double m_chronic = 1;
  bool acid_or_base = false;
  std::vector<std::string> inputs;  ///< ids of facts
  model::Trust trust = model::Trust::given;
  std::string substance;  ///< id of its record, or the name where it has none
  bool known = true;      ///< false where neither its record nor a table says anything: that is never none
};

/// The classes of a substance named by its record, its index number or its CAS number: those its record states where there
/// are facts, else those of annex VI, else none where the table no-classes says so. Nothing where the name is unknown.
std::optional<KnownHazards> hazards_of(std::string_view name, const Context& context);

}  // namespace benchleaf::bench
