#pragma once

namespace benchleaf::standards {

/// A ring pressed into a seat that does not yield. MPa.
struct PressFit {
  double pressure = 0;  ///< on the seat
  double hoop = 0;      ///< largest hoop stress, compression, at the inside of the ring
};

/// Lamé's thick cylinder under outer pressure, plane stress: a ring of this outside and wall (mm) that its seat holds smaller
/// by `oversize` across the diameter. A wall of half the outside is a full disc.
PressFit press_fit(double outside, double wall, double oversize, double modulus, double poisson);

}  // namespace benchleaf::standards
