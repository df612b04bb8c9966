// Dates as records and users write them (ISO 8601, 5.2.2), against the Gregorian calendar.
#include "base/calendar.h"

#include "support/catch.h"

using benchleaf::base::is_date;

TEST_CASE("a year, a month and a day that the calendar has are dates") {
  for (const char* date : {"2026", "2026-11", "2026-11-30", "2024-02-29", "2000-02-29"}) {
    INFO(date);
    CHECK(is_date(date));
  }
}

TEST_CASE("what no calendar has is no date") {
  for (const char* date : {"", "26", "2026-13", "2026-00", "2026-11-31", "2026-02-29", "1900-02-29", "2026-11-00", "2026/11",
                           "2026-11x30", "2026-1-30", "0000", "-026", "2026-11-30 "}) {
    INFO(date);
    CHECK_FALSE(is_date(date));
  }
}
