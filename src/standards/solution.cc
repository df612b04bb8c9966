// In: densities of solutions of a substance in water. Out: shares by mass turned into mass in volume and back.

#include "standards/solution.h"

#include <algorithm>
#include <cstddef>

namespace benchleaf::standards {

double density_of(const SolutionCurve& curve, double by_mass) {
  constexpr std::size_t kNearest = 4;
  const std::size_t points = std::min(kNearest, curve.size());
  std::size_t above = 1;
  while (above + 1 < curve.size() && curve[above].by_mass < by_mass) ++above;
  const std::size_t from = std::min(above < 2 ? 0 : above - 2, curve.size() - points);
  double density = 0;
  for (std::size_t i = from; i < from + points; ++i) {
    double part = curve[i].density;
    for (std::size_t k = from; k < from + points; ++k) {
      if (k != i) part *= (by_mass - curve[k].by_mass) / (curve[i].by_mass - curve[k].by_mass);
    }
    density += part;
  }
  return density;
}

double grams_per_millilitre(const SolutionCurve& curve, double by_mass) { return by_mass * density_of(curve, by_mass); }

double share_by_mass(const SolutionCurve& curve, double grams) {
  constexpr int kHalvings = 60;
  double low = 0;
  double high = curve.back().by_mass;
  for (int i = 0; i < kHalvings; ++i) {
    const double middle = (low + high) / 2;
    (grams_per_millilitre(curve, middle) < grams ? low : high) = middle;
  }
  return (low + high) / 2;
}

double water_to_add(const SolutionCurve& curve, double volume, double stock, double from, double to) {
  const double whole = volume * density_of(curve, share_by_mass(curve, to));
  const double taken = stock * density_of(curve, share_by_mass(curve, from));
  return (whole - taken) / curve.front().density;
}

}  // namespace benchleaf::standards
