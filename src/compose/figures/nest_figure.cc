// In: a series of gaskets. Out: circles of its whole insides at true size, parted so that a figure stands between two.
#include <cmath>

#include "base/quantity.h"
#include "compose/figures/figures.h"
#include "compose/figures/measure_drawings.h"

namespace benchleaf::compose {

namespace {

/// Millimetres of diameter between two circles of a nest.
constexpr int kStep = 6;
/// 8 pt: its figures are 2 mm high and lie in the 3 mm between two circles.
constexpr double kKeyMm = 8 * 25.4 / 72;

}  // namespace

std::vector<std::shared_ptr<const model::Drawing>> nests_of(const model::Gasket& series) {
  if (!series.inside.from || !series.inside.to) return {};
  const auto from = series.inside.from->value_in(base::Unit::millimetre);
  const auto to = series.inside.to->value_in(base::Unit::millimetre);
  if (!from || !to) return {};
  const int least = static_cast<int>(std::ceil(*from));
  const int most = static_cast<int>(std::floor(*to));
  std::vector<std::shared_ptr<const model::Drawing>> nests;
  for (int first = least; first < least + kStep && first <= most; ++first) {
    std::vector<int> diameters;
    for (int diameter = first; diameter <= most; diameter += kStep) diameters.push_back(diameter);
    nests.push_back(nest(diameters, kKeyMm));
  }
  return nests;
}

}  // namespace benchleaf::compose
