#pragma once

#include <memory>
#include <optional>
#include <string>

#include "model/drawing.h"
#include "model/fact.h"
#include "model/words.h"

namespace benchleaf::compose {

/// A crystal and what holds it, as records have it.
struct CrystalFit {
  std::optional<model::Fixing> fixing;
  std::string holder;                      ///< the word for what holds it: tension ring, L gasket; or empty
  const model::Fact* thickness = nullptr;  ///< of the crystal
  const model::Fact* oversize = nullptr;   ///< across, over its seat, or over the inside of its ring; none where cemented
  const model::Fact* wall = nullptr;       ///< of the ring round a glass
  const model::Fact* height = nullptr;
};

/// How many times their size crystal and ring are drawn, and the oversize, which would be too narrow to see.
inline constexpr double kCrystalScale = 6;
inline constexpr double kOversizeScale = 30;

/// The left edge of a crystal in its seat, in section, face up. Thickness, and wall and height of a ring, are to one scale,
/// an interval at its middle. Half of the oversize, which is what one edge has of it, is dashed beyond the edge to a scale
/// of its own: where the edge of the free crystal would be. Seat and lip are drawn to no scale. Nothing for a fixing that is
/// none of the four, or without the facts it needs.
std::shared_ptr<const model::Drawing> crystal_section(const CrystalFit& fit);

}  // namespace benchleaf::compose
