#pragma once

#include "standards/plate.h"

namespace benchleaf::standards {

/// What a rectangle on simple supports does under a load of 1 (1 MPa all over, or 1 N on a round patch in its centre), by
/// Navier's double series (Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, chapter 5). Thickness, stiffness and
/// Poisson ratio come in afterwards: the series does not know them.
struct NavierSums {
  double across = 0;  ///< curvature across the short side by stiffness: of the moment
  double along = 0;   ///< the same along the long side
  double twist = 0;   ///< the same of the twist in a corner
  double sag = 0;     ///< of the centre, by stiffness
};

/// Sides in mm; the patch has `patch_radius` and no more than half the short side, 0 means pressure all over.
NavierSums navier_sums(double width, double length, double patch_radius);

/// The rectangle of these sums under a load: largest stress, of the middle or of the corners, and sag of the centre.
PlateResult simple_rectangle(const NavierSums& sums, double load, double thickness, const PlateMaterial& material);

}  // namespace benchleaf::standards
