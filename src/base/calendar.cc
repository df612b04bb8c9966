// In: a date as written. Out: whether the calendar has it.
#include "base/calendar.h"

#include <chrono>

#include "base/ascii.h"

namespace benchleaf::base {

namespace {

/// A number of some digits, or -1.
int number_at(std::string_view text, std::size_t at, std::size_t digits) {
  if (text.size() < at + digits) return -1;
  int number = 0;
  for (const char c : text.substr(at, digits)) {
    if (!is_digit(c)) return -1;
    number = number * 10 + (c - '0');
  }
  return number;
}

}  // namespace

bool is_date(std::string_view text) {
  constexpr std::size_t kYear = 4, kMonth = 7, kDay = 10;
  if (text.size() != kYear && text.size() != kMonth && text.size() != kDay) return false;
  if ((text.size() > kYear && text[kYear] != '-') || (text.size() > kMonth && text[kMonth] != '-')) return false;
  const int year = number_at(text, 0, 4);
  const int month = text.size() > kYear ? number_at(text, kYear + 1, 2) : 1;
  const int day = text.size() > kMonth ? number_at(text, kMonth + 1, 2) : 1;
  if (year < 1 || month < 1 || day < 1) return false;
  return std::chrono::year_month_day(std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                                     std::chrono::day(static_cast<unsigned>(day)))
      .ok();
}

}  // namespace benchleaf::base
