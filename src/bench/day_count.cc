// In: a date with or without a time. Out: days since 1970, by the proleptic Gregorian calendar.

#include "bench/day_count.h"

#include <array>

namespace benchleaf::bench {
namespace {

constexpr int kHours = 24, kMinutes = 60, kSeconds = 60;
constexpr double kSecondsADay = 86400;

/// Reads so many digits; -1 where there are none.
int take_digits(std::string_view& text, std::size_t count) {
  if (text.size() < count) return -1;
  int value = 0;
  for (std::size_t i = 0; i < count; ++i) {
    if (text[i] < '0' || text[i] > '9') return -1;
    value = value * 10 + (text[i] - '0');
  }
  text.remove_prefix(count);
  return value;
}

bool take(std::string_view& text, std::string_view one_of) {
  if (text.empty() || one_of.find(text.front()) == std::string_view::npos) return false;
  text.remove_prefix(1);
  return true;
}

bool is_leap(int year) { return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0); }

int days_in(int year, int month) {
  constexpr std::array<int, 12> kDays = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return kDays.at(static_cast<std::size_t>(month - 1)) + (month == 2 && is_leap(year) ? 1 : 0);
}

double days_before(int year, int month) {
  double days = 0;
  for (int one = 1970; one < year; ++one) days += is_leap(one) ? 366 : 365;
  for (int one = 1; one < month; ++one) days += days_in(year, one);
  return days;
}

/// Seconds of `20:00` or `20:00:30`; nothing where it is no time.
std::optional<int> read_time(std::string_view text) {
  const int hour = take_digits(text, 2);
  if (hour < 0 || hour >= kHours || !take(text, ":")) return std::nullopt;
  const int minute = take_digits(text, 2);
  if (minute < 0 || minute >= kMinutes) return std::nullopt;
  const int second = take(text, ":") ? take_digits(text, 2) : 0;
  if (second < 0 || second >= kSeconds || !text.empty()) return std::nullopt;
  return (hour * kMinutes + minute) * kSeconds + second;
}

}  // namespace

std::optional<double> days_of_moment(std::string_view text) {
  const int year = take_digits(text, 4);
  if (year < 1970 || !take(text, "-")) return std::nullopt;
  const int month = take_digits(text, 2);
  if (month < 1 || month > 12 || !take(text, "-")) return std::nullopt;
  const int day = take_digits(text, 2);
  if (day < 1 || day > days_in(year, month)) return std::nullopt;
  const double days = days_before(year, month) + day - 1;
  if (text.empty()) return days;
  if (!take(text, " T")) return std::nullopt;
  const auto seconds = read_time(text);
  if (!seconds) return std::nullopt;
  return days + *seconds / kSecondsADay;
}

}  // namespace benchleaf::bench
