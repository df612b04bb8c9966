// In: measures of a round ring and its groove. Out: stretch, section, squeeze, fill, by the formulas of seal makers' guides;
// the torus by the rule of Pappus: its volume is that of the section times the way of its centre.

#include "standards/ring.h"

#include <cmath>

namespace benchleaf::standards {
namespace {

constexpr double kPi = 3.14159265358979323846;
constexpr int kHalvings = 60;

}  // namespace

double stretch_percent(double inside, double seat) { return 100 * (seat - inside) / inside; }

double interference_percent(double outside, double bore) { return 100 * (outside - bore) / outside; }

double stretched_section(double section, double inside, double seat) { return section * std::sqrt(inside / seat); }

double stretched_section_of_torus(double section, double inside, double seat) {
  const double volume = section * section * (inside + section);
  double low = 0;
  double high = 2 * section;
  for (int i = 0; i < kHalvings; ++i) {
    const double middle = (low + high) / 2;
    (middle * middle * (seat + middle) < volume ? low : high) = middle;
  }
  return (low + high) / 2;
}

double squeeze_percent(double section, double depth) { return 100 * (section - depth) / section; }

double fill_percent(double section, double depth, double width) { return 100 * (kPi * section * section / 4) / (depth * width); }

}  // namespace benchleaf::standards
