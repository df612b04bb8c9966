// Digits as numbers, as a reader counts (design: SR41 before SR416). No outside source.

#include "support/catch.h"

#include "derive/natural_order.h"

using benchleaf::derive::natural_less;

TEST_CASE("digits count as numbers") {
  CHECK(natural_less("SR41", "SR416"));
  CHECK(natural_less("grades.2.median", "grades.10.median"));
  CHECK_FALSE(natural_less("grades.10.median", "grades.2.median"));
  CHECK(natural_less("AG9", "AG10"));
  CHECK(natural_less("7", "11"));
}

TEST_CASE("the order is strict: equal texts are not before each other, and zeros break ties") {
  CHECK_FALSE(natural_less("SR41", "SR41"));
  CHECK(natural_less("a01", "a1"));
  CHECK_FALSE(natural_less("a1", "a01"));
  CHECK(natural_less("", "a"));
  CHECK_FALSE(natural_less("a", ""));
  CHECK(natural_less("a", "a1"));
}
