// In: a ring, its oversize, its material. Out: pressure and hoop stress in a stiff seat, by Lamé.

#include "standards/press_fit.h"

namespace benchleaf::standards {

PressFit press_fit(double outside, double wall, double oversize, double modulus, double poisson) {
  const double inside = outside - 2 * wall;
  const double outer = outside * outside;
  const double inner = inside * inside;
  const double shape = (outer + inner) / (outer - inner);
  PressFit fit;
  fit.pressure = modulus * oversize / outside / (shape - poisson);
  // In a full disc the stress is the pressure everywhere; the bore of a ring doubles it at its edge.
  fit.hoop = inside > 0 ? 2 * fit.pressure * outer / (outer - inner) : fit.pressure;
  return fit;
}

}  // namespace benchleaf::standards
