// Figures keep their units on the line (SI Brochure, 9th edition, section 5.4.3).
#include "page/joined_units.h"

#include "support/catch.h"

using benchleaf::page::with_units_joined;

TEST_CASE("a figure and its unit are not parted, anything else is") {
  CHECK(with_units_joined("honey, 10 mL every 10 min.") == "honey, 10\u00A0mL every 10\u00A0min.");
  CHECK(with_units_joined("at 20 \u00B0C, 3 % or 5 mm.") == "at 20\u00A0\u00B0C, 3\u00A0% or 5\u00A0mm.");
  CHECK(with_units_joined("the 393 and 12 cells in 2026 or") == "the 393 and 12 cells in 2026 or");
  CHECK(with_units_joined("").empty());
  CHECK(with_units_joined("5 ") == "5 ");
}
