#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "model/record.h"

namespace benchleaf::model {

/// Sizes that a series comes in.
struct SizeRange {
  std::optional<base::Quantity> from;
  std::optional<base::Quantity> to;
  std::optional<base::Quantity> step;
};

/// A series of gaskets with one section.
struct Gasket : Record {
  std::optional<Profile> profile;
  std::optional<base::Quantity> section;
  std::optional<base::Quantity> section_tolerance;
  std::optional<base::Quantity> wall;
  std::optional<base::Quantity> height;
  SizeRange inside;
  std::optional<base::Quantity> inside_tolerance;
  RecordRef material;  ///< `material/ID`
  std::vector<Seat> seats;
  std::optional<bool> moving;
  std::string recognise;
};

}  // namespace benchleaf::model
