// In: sides of a rectangle on simple supports, pressure or a round patch in the centre. Out: its moments and sag by Navier's
// series, for any Poisson ratio and ratio of the sides.

#include "standards/rectangle.h"

#include <math.h>  // j1 is of POSIX and not in <cmath>

#include <algorithm>
#include <cmath>

namespace benchleaf::standards {
namespace {

constexpr double kPi = 3.14159265358979323846;
constexpr int kTerms = 301;  // of each series: the moment under a thumb then lacks less than a thousandth

/// Coefficient of one wave of the load: of pressure 1 all over, or of a force 1 on a patch.
double wave(int m, int n, double gamma, double area, double patch_radius) {
  if (patch_radius <= 0) return 16 / (kPi * kPi * m * n) * ((m / 2 + n / 2) % 2 == 0 ? 1 : -1);
  const double reach = gamma * patch_radius;
  return 4 / area * 2 * ::j1(reach) / reach;
}

}  // namespace

NavierSums navier_sums(double width, double length, double patch_radius) {
  const double patch = std::min({patch_radius, width / 2, length / 2});
  NavierSums sums;
  for (int m = 1; m <= kTerms; m += 2) {
    for (int n = 1; n <= kTerms; n += 2) {
      const double across = kPi * m / width;
      const double along = kPi * n / length;
      const double square = across * across + along * along;
      // At the centre each odd wave is 1 or -1; the sign of a centred patch goes into its coefficient and cancels there.
      const double load = wave(m, n, std::sqrt(square), width * length, patch);
      const double bent = load / (square * square);
      sums.sag += bent;
      sums.across += bent * across * across;
      sums.along += bent * along * along;
      const double sign = (m / 2 + n / 2) % 2 == 0 ? 1 : -1;
      sums.twist += bent * sign * across * along;
    }
  }
  return sums;
}

PlateResult simple_rectangle(const NavierSums& sums, double load, double thickness, const PlateMaterial& material) {
  const double nu = material.poisson;
  const double middle = std::max(sums.across + nu * sums.along, sums.along + nu * sums.across);
  const double corner = std::abs(1 - nu) * std::abs(sums.twist);
  const double stiffness = material.modulus * thickness * thickness * thickness / (12 * (1 - nu * nu));
  return {6 * load * std::max(middle, corner) / (thickness * thickness), load * sums.sag / stiffness};
}

}  // namespace benchleaf::standards
