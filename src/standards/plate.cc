// In: measures, load, material of a flat plate. Out: its largest stress and the sag of its centre.
// Discs: Timoshenko's plate theory, as engineers' data handbooks print it; rectangles: tabulated coefficients of handbooks.

#include "standards/plate.h"

#include <algorithm>
#include <cmath>

namespace benchleaf::standards {
namespace {

constexpr double kPi = 3.14159265358979323846;

double stiffness(double thickness, const PlateMaterial& material) {
  return material.modulus * thickness * thickness * thickness / (12 * (1 - material.poisson * material.poisson));
}

/// Handbooks replace a patch that is small against the thickness by a larger one; above half the thickness it stays.
double working_radius(double patch_radius, double thickness) {
  if (patch_radius >= thickness / 2) return patch_radius;
  return std::sqrt(1.6 * patch_radius * patch_radius + thickness * thickness) - 0.675 * thickness;
}

}  // namespace

PlateResult disc_under_pressure(double radius, double thickness, double pressure, const PlateMaterial& material, Edge edge) {
  const double nu = material.poisson;
  const double load = pressure * radius * radius / (thickness * thickness);
  const double way = pressure * radius * radius * radius * radius / (64 * stiffness(thickness, material));
  if (edge == Edge::clamped) return {3 * load / 4, way};
  return {3 * (3 + nu) * load / 8, way * (5 + nu) / (1 + nu)};
}

PlateResult disc_under_patch(double radius, double thickness, double force, double patch_radius, const PlateMaterial& material,
                             Edge edge) {
  const double nu = material.poisson;
  const double a = radius;
  const double c = std::min(patch_radius, radius);
  const double r = std::min(working_radius(c, thickness), radius);
  const double load = 3 * force / (2 * kPi * thickness * thickness);
  const double log_r = std::log(a / r);
  const double log_c = std::log(a / c);
  const double d = stiffness(thickness, material);
  if (edge == Edge::clamped) {
    const double centre = load * (1 + nu) * (log_r + r * r / (4 * a * a));
    const double rim = load * (1 - r * r / (2 * a * a));
    return {std::max(centre, rim), force / (64 * kPi * d) * (4 * a * a - 4 * c * c * log_c - 3 * c * c)};
  }
  const double stress = load * ((1 + nu) * log_r + 1 - (1 - nu) * r * r / (4 * a * a));
  const double sag =
      force / (16 * kPi * d) * ((3 + nu) / (1 + nu) * a * a - c * c * log_c - (7 + 3 * nu) / (4 * (1 + nu)) * c * c);
  return {stress, sag};
}

PlateCoefficients between(const PlateCoefficients& one, const PlateCoefficients& other, double share) {
  const auto mix = [share](double a, double b) { return a + share * (b - a); };
  return {mix(one.stress, other.stress), mix(one.edge, other.edge), mix(one.sag, other.sag)};
}

PlateResult rectangle_under_pressure(double width, double thickness, double pressure, const PlateMaterial& material,
                                     const PlateCoefficients& coefficients) {
  const double slender = width / thickness;
  return {coefficients.stress * pressure * slender * slender,
          coefficients.sag * pressure * slender * slender * slender * width / material.modulus};
}

PlateResult rectangle_under_patch(double width, double thickness, double force, double patch_radius,
                                  const PlateMaterial& material, const PlateCoefficients& coefficients) {
  const double r = std::min(working_radius(patch_radius, thickness), width / 2);
  const double square = thickness * thickness;
  const double logarithm = (1 + material.poisson) * std::log(2 * width / (kPi * r));
  const double centre = 3 * force / (2 * kPi * square) * (logarithm + coefficients.stress);
  const double edge = coefficients.edge * force / square;
  return {std::max(centre, edge), coefficients.sag * force * width * width / (material.modulus * square * thickness)};
}

}  // namespace benchleaf::standards
