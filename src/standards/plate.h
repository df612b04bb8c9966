#pragma once

namespace benchleaf::standards {

// Thin flat plates of one material under small deflection. Lengths in mm, stress and pressure in MPa, force in N.

enum class Edge { simple, clamped };

struct PlateMaterial {
  double modulus = 0;  ///< MPa
  double poisson = 0;
};

/// Largest stress in MPa and sag of the centre in mm.
struct PlateResult {
  double stress = 0;
  double sag = 0;
};

/// A disc under uniform pressure; `radius` is that of the free span.
PlateResult disc_under_pressure(double radius, double thickness, double pressure, const PlateMaterial& material, Edge edge);
/// A disc under a force spread evenly over a round patch in its centre; a patch as wide as the disc is uniform pressure.
PlateResult disc_under_patch(double radius, double thickness, double force, double patch_radius, const PlateMaterial& material,
                             Edge edge);

/// Coefficients of a rectangle with one ratio of its sides, for one load and edge.
struct PlateCoefficients {
  double stress = 0;
  double edge = 0;  ///< of the fixed edge, for a patch; else 0
  double sag = 0;
};
/// Between two ratios the coefficients are taken in proportion.
PlateCoefficients between(const PlateCoefficients& one, const PlateCoefficients& other, double share);

/// A rectangle under uniform pressure; `width` is the short side of the free span.
PlateResult rectangle_under_pressure(double width, double thickness, double pressure, const PlateMaterial& material,
                                     const PlateCoefficients& coefficients);
/// A rectangle under a round patch in its centre.
PlateResult rectangle_under_patch(double width, double thickness, double force, double patch_radius,
                                  const PlateMaterial& material, const PlateCoefficients& coefficients);

}  // namespace benchleaf::standards
