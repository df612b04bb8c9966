#pragma once

namespace benchleaf::test {

/// A flat crystal as a solid for CalculiX: linear, small deflection. mm, MPa, N.
struct Solid {
  double radius_or_width = 0;  ///< radius of a disc, short side of a rectangle
  double length = 0;           ///< long side; unused for a disc
  double thickness = 0;
  double modulus = 0;
  double poisson = 0;
  bool clamped = false;
  double pressure = 0;  ///< on the whole face, or
  double force = 0;     ///< on a round patch in the centre
  double patch_radius = 0;
  int coarser = 1;  ///< divides the number of elements each way, to see what the mesh does
};

/// Stress of the centre at the face away from the load, and sag of the centre. Zeros where ccx gave none.
struct Solved {
  double stress = 0;
  double sag = 0;
};

/// A ring that a stiff seat holds smaller across its diameter by `oversize`.
struct Ring {
  double outside = 0, wall = 0, oversize = 0, modulus = 0, poisson = 0;
  int coarser = 1;  ///< divides the number of elements over the wall
};

/// Radial stress at the outside and hoop stress at the inside, MPa. Zeros where ccx gave none.
struct Squeezed {
  double pressure = 0;
  double hoop = 0;
};

/// Axisymmetric elements CAX8 over the wall, free along the axis.
Squeezed solve_ring(const Ring& ring);

/// Axisymmetric elements CAX8 over radius and thickness.
Solved solve_disc(const Solid& solid);
/// A quarter of the plate in elements C3D20R.
Solved solve_rectangle(const Solid& solid);

}  // namespace benchleaf::test
