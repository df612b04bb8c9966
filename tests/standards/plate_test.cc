// Plates against published worked examples and coefficients.

#include "support/catch.h"

#include <initializer_list>

#include "standards/plate.h"

using namespace benchleaf;
using standards::Edge;
using standards::PlateMaterial;

namespace {

constexpr double kInch = 25.4;              // mm
constexpr double kPsi = 0.006894757293168;  // MPa

}  // namespace

TEST_CASE("clamped disc: 7200 psi and 0.0874 in (Timoshenko, Strength of Materials II, 3rd ed., pp. 96-97)") {
  const PlateMaterial steel{30e6 * kPsi, 0.3};
  const auto result = standards::disc_under_pressure(40 * kInch, 1 * kInch, 6 * kPsi, steel, Edge::clamped);
  CHECK(result.stress / kPsi == Approx(7200).epsilon(1e-9));
  CHECK(result.sag / kInch == Approx(0.0874).epsilon(0.001));
  CHECK(result.stress == Approx(49.64).epsilon(0.0002));
  CHECK(result.sag == Approx(2.219).epsilon(0.0005));
}

TEST_CASE("coefficients of discs at a Poisson ratio of 0.3 (Mechanical Engineer's Data Handbook, p. 53)") {
  const PlateMaterial unit{1, 0.3};
  const auto free = standards::disc_under_pressure(1, 1, 1, unit, Edge::simple);
  const auto fixed = standards::disc_under_pressure(1, 1, 1, unit, Edge::clamped);
  CHECK(free.stress == Approx(1.238).epsilon(0.0005));
  CHECK(free.sag == Approx(0.696).epsilon(0.001));
  CHECK(fixed.sag == Approx(0.171).epsilon(0.003));
  CHECK(fixed.stress == Approx(0.75));
}

TEST_CASE("a mirror of 45.72 cm sags by 1.9 cm, twice its thickness (a telescope makers' list, 2004)") {
  constexpr double kGramForce = 9.80665e-3;  // N
  const PlateMaterial glass{7e8 * kGramForce / 100, 0.24};
  const auto result = standards::disc_under_pressure(457.2, 9.5, 351.5 * kGramForce / 100, glass, Edge::simple);
  CHECK(result.sag == Approx(19).epsilon(0.01));
  CHECK(result.sag > 9.5 / 2);
}

TEST_CASE("a patch as wide as the disc is uniform pressure, for both edges (mass balance of the load)") {
  constexpr double kPi = 3.14159265358979;
  const PlateMaterial acrylic{3000, 0.37};
  for (const Edge edge : {Edge::simple, Edge::clamped}) {
    const auto uniform = standards::disc_under_pressure(13, 1.5, 0.1, acrylic, edge);
    const auto patch = standards::disc_under_patch(13, 1.5, 0.1 * kPi * 13 * 13, 13, acrylic, edge);
    CHECK(patch.sag == Approx(uniform.sag).epsilon(1e-9));
    if (edge == Edge::simple) CHECK(patch.stress == Approx(uniform.stress).epsilon(1e-9));
  }
}

TEST_CASE("a thumb on acrylic: safety about 2.1 at 1.0 mm and 4.8 at 1.5 mm (handbook formula for a central patch, by hand)") {
  const PlateMaterial acrylic{3000, 0.37};
  CHECK(70 / standards::disc_under_patch(13, 1.0, 30, 5, acrylic, Edge::simple).stress == Approx(2.1).epsilon(0.03));
  CHECK(70 / standards::disc_under_patch(13, 1.5, 30, 5, acrylic, Edge::simple).stress == Approx(4.8).epsilon(0.01));
}

TEST_CASE("stress falls by the square and sag by the cube of the thickness") {
  const PlateMaterial acrylic{3000, 0.37};
  const auto thin = standards::disc_under_patch(13, 1, 30, 5, acrylic, Edge::simple);
  const auto thick = standards::disc_under_patch(13, 2, 30, 5, acrylic, Edge::simple);
  CHECK(thin.stress / thick.stress == Approx(4));
  CHECK(thin.sag / thick.sag == Approx(8));
}

TEST_CASE("clamped is stiffer than free, for discs under pressure and patch") {
  const PlateMaterial glass{70000, 0.22};
  for (const double radius : {8.0, 13.0, 18.0}) {
    CHECK(standards::disc_under_pressure(radius, 1, 0.01, glass, Edge::clamped).sag <
          standards::disc_under_pressure(radius, 1, 0.01, glass, Edge::simple).sag);
    CHECK(standards::disc_under_patch(radius, 1, 30, 5, glass, Edge::clamped).stress <
          standards::disc_under_patch(radius, 1, 30, 5, glass, Edge::simple).stress);
  }
}
