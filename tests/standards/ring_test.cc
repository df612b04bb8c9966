// Rings in grooves against a published gland table and their own properties.

#include "support/catch.h"

#include <cmath>
#include <initializer_list>

#include "standards/ring.h"

using namespace benchleaf;

namespace {

/// A row of the static gland table of a seal maker's design guide, inches; squeeze in per cent as printed, without decimals.
struct GlandRow {
  double section, tolerance, least_depth, most_depth, least_squeeze, most_squeeze;
};
constexpr GlandRow kGlandTable[] = {
    {.030, .003, .020, .022, 19, 39}, {.050, .003, .035, .039, 17, 34}, {.070, .003, .050, .055, 18, 32},
    {.139, .004, .110, .116, 14, 23}, {.275, .006, .225, .235, 13, 20},
};

}  // namespace

TEST_CASE("worst-case squeeze is that of the static gland table (seal maker's design guide, ten printed figures)") {
  for (const auto& row : kGlandTable) {
    INFO(row.section);
    CHECK(std::round(standards::squeeze_percent(row.section - row.tolerance, row.most_depth)) == row.least_squeeze);
    CHECK(std::round(standards::squeeze_percent(row.section + row.tolerance, row.least_depth)) == row.most_squeeze);
  }
}

TEST_CASE("stretch: 28.00 on 28.50 is 1.786 %, 28.5 on 28.60 0.351 % (formula of a seal maker's article, by hand)") {
  CHECK(standards::stretch_percent(28.00, 28.50) == Approx(100 * 0.5 / 28));
  CHECK(standards::stretch_percent(28.5, 28.60) == Approx(0.351).epsilon(0.001));
  CHECK(standards::interference_percent(28.5, 28.0) == Approx(100 * 0.5 / 28.5));
}

TEST_CASE("the torus keeps its volume (Pappus), and the simple form stays within 0.17 points of it up to 5 %") {
  constexpr double kPi = 3.14159265358979;
  for (const double inside : {8.0, 20.0, 31.0, 40.0}) {
    for (const double ratio : {0.01, 0.03, 0.05}) {
      for (const double stretch : {0.5, 1.0, 2.0, 5.0}) {
        const double section = inside * ratio;
        const double seat = inside * (1 + stretch / 100);
        const double torus = standards::stretched_section_of_torus(section, inside, seat);
        const double simple = standards::stretched_section(section, inside, seat);
        const double before = kPi * kPi / 4 * section * section * (inside + section);
        const double after = kPi * kPi / 4 * torus * torus * (seat + torus);
        CHECK(after == Approx(before).epsilon(1e-9));
        CHECK(torus >= simple);
        CHECK(torus < section);
        CHECK(100 * (torus - simple) / section <= 0.17);
      }
    }
  }
}

TEST_CASE("squeeze falls and fill falls with the depth, and a groove of the section's own area is full") {
  double squeeze = 100;
  double fill = 1000;
  for (double depth = 0.3; depth < 0.8; depth += 0.05) {
    CHECK(standards::squeeze_percent(0.8, depth) < squeeze);
    CHECK(standards::fill_percent(0.8, depth, 1.0) < fill);
    squeeze = standards::squeeze_percent(0.8, depth);
    fill = standards::fill_percent(0.8, depth, 1.0);
  }
  CHECK(standards::fill_percent(2, 1, 3.14159265358979) == Approx(100));
}
