#pragma once

#include <vector>

namespace benchleaf::standards {

/// Density of a solution in water, g/mL, by the share of its substance by mass, 0 to 1.
struct SolutionPoint {
  double by_mass = 0;
  double density = 0;
};

/// Points in rising order of their share, two or more, the first of them water.
using SolutionCurve = std::vector<SolutionPoint>;

/// Density at a share by mass within the curve, g/mL: by Lagrange's polynomial through the four nearest points.
double density_of(const SolutionCurve& curve, double by_mass);

/// Grams of the substance in a millilitre of a solution of this share by mass.
double grams_per_millilitre(const SolutionCurve& curve, double by_mass);

/// The share by mass that has so many grams in a millilitre; the end of the curve where that is more than it has.
double share_by_mass(const SolutionCurve& curve, double grams);

/// Millilitres of water that bring `stock` mL of a solution of `from` grams a millilitre to `volume` mL of one of `to`. By
/// mass, for the two together take another room than apart.
double water_to_add(const SolutionCurve& curve, double volume, double stock, double from, double to);

}  // namespace benchleaf::standards
