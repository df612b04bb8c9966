// In: columns of a table that are narrower than their words. Out: the room that is left, shared out among them.
#include "page/column_widths.h"

#include <algorithm>

namespace benchleaf::page {

namespace {

constexpr double kStepMm = 1.0;

using Naturals = std::vector<std::vector<Length>>;

/// How many lines high the table is, if each cell fills its lines: a row is as high as its fullest cell.
double height_with(const std::vector<Length>& width, const Naturals& naturals) {
  double lines = 0;
  for (const auto& row : naturals) {
    double most = 1;
    for (std::size_t i = 0; i < width.size(); ++i)
      most = std::max(most, static_cast<double>(row[i]) / static_cast<double>(std::max<Length>(width[i], 1)));
    lines += most;
  }
  return lines;
}

/// The column that lowers the table most when it gets `step` more; of equals the one that lacks most.
std::size_t worthiest(const std::vector<Length>& width, const std::vector<Length>& wanted, const Naturals& naturals,
                      Length step) {
  std::size_t best = 0;
  double lowest = 0;
  Length lacks = -1;
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    std::vector<Length> wider = width;
    wider[i] += step;
    const double lines = height_with(wider, naturals);
    const Length wanting = wanted[i] - width[i];
    if (lacks >= 0 && (lines > lowest || (lines == lowest && wanting <= lacks))) continue;
    best = i, lowest = lines, lacks = std::max<Length>(wanting, 0);
  }
  return best;
}

}  // namespace

void widen_columns(std::vector<Length>& width, const std::vector<Length>& wanted, const Naturals& naturals, Length spare) {
  while (spare > 0) {
    const Length step = std::min(spare, from_mm(kStepMm));
    width[worthiest(width, wanted, naturals, step)] += step;
    spare -= step;
  }
}

}  // namespace benchleaf::page
