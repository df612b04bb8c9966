// In: decimal text, or a double. Out: the other one. strtod and snprintf do the arithmetic, both correctly rounded, but
// never see or give a decimal point: digits go to strtod as a whole number with an exponent, and of what snprintf prints
// only digits and exponent are kept. So a locale with a decimal comma changes nothing.
#include "base/number.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdio>
#include <cstdlib>

#include "base/ascii.h"

namespace benchleaf::base {

namespace {

constexpr std::size_t kLongestNumber = 40;
constexpr int kSafeDigits = 15;  ///< any decimal of so many digits survives a double
constexpr int kAllDigits = 17;   ///< any double survives so many digits
constexpr int kMostExponent = 999;

bool all_digits(std::string_view text) { return !text.empty() && std::all_of(text.begin(), text.end(), is_digit); }

/// A decimal number: 0.DIGITS times ten to the power of `point`.
struct Digits {
  bool negative = false;
  std::string digits;
  int point = 0;
};

double to_double(const Digits& number) {
  const int power = number.point - static_cast<int>(number.digits.size());
  const std::string text = number.digits + "e" + std::to_string(power);
  const double value = std::strtod(text.c_str(), nullptr);
  return number.negative ? -value : value;
}

/// The `count` significant digits of a finite value.
Digits digits_of(double value, int count) {
  std::array<char, 64> text{};
  std::snprintf(text.data(), text.size(), "%.*e", count - 1, std::fabs(value));
  const std::string_view printed = text.data();
  const std::size_t mark = printed.find('e');
  Digits number;
  number.negative = std::signbit(value);
  for (char c : printed.substr(0, mark)) {
    if (is_digit(c)) number.digits += c;
  }
  number.point = std::atoi(text.data() + mark + 1) + 1;
  return number;
}

void cut_zeros(std::string& text) {
  if (text.find('.') == std::string::npos) return;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
}

/// Adds one in the last place.
void count_up(std::string& digits) {
  std::size_t at = digits.size();
  while (at > 0 && digits.at(at - 1) == '9') digits.at(--at) = '0';
  if (at == 0) {
    digits.insert(digits.begin(), '1');
  } else {
    ++digits.at(at - 1);
  }
}

bool rounds_away(const Digits& number, std::string_view dropped, Rounding rounding) {
  if (rounding == Rounding::half_away) return !dropped.empty() && dropped.front() >= '5';
  const bool exact = dropped.find_first_not_of('0') == std::string_view::npos;
  return !exact && number.negative == (rounding == Rounding::down);
}

/// Lays out digits with `decimals` places after the point, rounding what does not fit.
std::string laid_out(const Digits& number, int decimals, Rounding rounding) {
  std::string digits = number.digits;
  const int before = std::min(number.point, 0);  // zeros between the point and the first digit
  digits.insert(0, static_cast<std::size_t>(-before), '0');
  const std::size_t whole = static_cast<std::size_t>(std::max(number.point, 0));
  const std::size_t kept = whole + static_cast<std::size_t>(decimals);
  std::string dropped;
  if (digits.size() > kept) dropped = digits.substr(kept);
  digits.resize(kept, '0');
  if (rounds_away(number, dropped, rounding)) count_up(digits);
  if (digits.size() <= static_cast<std::size_t>(decimals)) {
    digits.insert(0, static_cast<std::size_t>(decimals) + 1 - digits.size(), '0');
  }
  const bool zero = digits.find_first_not_of('0') == std::string::npos;
  if (decimals > 0) digits.insert(digits.size() - static_cast<std::size_t>(decimals), 1, '.');
  return number.negative && !zero ? "-" + digits : digits;
}

/// A number that was split into its parts; `fault` says why it is none.
struct Parts {
  bool negative = false;
  std::string_view whole;
  std::string_view fraction;
  int exponent = 0;
  NumberFault fault = NumberFault::none;
};

NumberFault read_exponent(std::string_view text, Exponent allowed, Parts& parts) {
  std::string_view digits = text;
  const bool down = !digits.empty() && digits.front() == '-';
  if (!digits.empty() && (digits.front() == '-' || digits.front() == '+')) digits.remove_prefix(1);
  if (!all_digits(digits)) return NumberFault::not_a_number;
  if (allowed == Exponent::refuse) return NumberFault::exponent;
  if (digits.size() > 3) return NumberFault::too_large;
  const int power = std::min(std::atoi(std::string(digits).c_str()), kMostExponent);
  parts.exponent = down ? -power : power;
  return NumberFault::none;
}

Parts split(std::string_view text, Exponent exponent) {
  Parts parts;
  if (!text.empty() && text.front() == '-') {
    parts.negative = true;
    text.remove_prefix(1);
  }
  if (const std::size_t mark = text.find_first_of("eE"); mark != std::string_view::npos && mark > 0) {
    parts.fault = read_exponent(text.substr(mark + 1), exponent, parts);
    text = text.substr(0, mark);
  }
  const std::size_t point = text.find('.');
  parts.whole = text.substr(0, point);
  const bool pointed = point != std::string_view::npos;
  if (pointed) parts.fraction = text.substr(point + 1);
  if (!all_digits(std::string(parts.whole) + std::string(parts.fraction))) {
    parts.fault = NumberFault::not_a_number;
  } else if (parts.whole.empty() || (pointed && parts.fraction.empty())) {
    parts.fault = NumberFault::bare_point;
  } else if (parts.whole.size() > 1 && parts.whole.front() == '0') {
    parts.fault = NumberFault::leading_zero;
  }
  return parts;
}

ReadNumber refused(NumberFault fault, std::string hint = {}) { return {std::nullopt, 0, fault, std::move(hint)}; }

/// The text of a number as it ought to be written, or empty.
std::string mended(const std::string& text, Exponent exponent) {
  return read_number(text, exponent).fault == NumberFault::none ? text : std::string();
}

/// `1,234` may be a grouped or a decimal number, so both are offered.
ReadNumber refuse_comma(std::string_view text, Exponent exponent) {
  std::string point(text);
  std::string grouped(text);
  std::replace(point.begin(), point.end(), ',', '.');
  grouped.erase(std::remove(grouped.begin(), grouped.end(), ','), grouped.end());
  point = mended(point, exponent);
  const std::size_t first = text.find(',');
  const std::string_view last = text.substr(text.rfind(',') + 1);
  const std::size_t lead = first - (text.front() == '-' ? 1 : 0);
  const bool could_group = last.size() == 3 && lead > 0 && lead <= 3 && text.substr(first - lead, 1) != "0";
  grouped = could_group ? mended(grouped, exponent) : std::string();
  if (!point.empty() && !grouped.empty()) return refused(NumberFault::decimal_comma, point + " or " + grouped);
  return refused(NumberFault::decimal_comma, point.empty() ? grouped : point);
}

/// Length in bytes of a minus that is none of ASCII at the start of the text, or 0.
std::size_t foreign_minus(std::string_view text) {
  constexpr std::array<std::string_view, 6> kSigns = {"\xE2\x88\x92", "\xE2\x80\x90", "\xE2\x80\x91",
                                                      "\xE2\x80\x92", "\xE2\x80\x93", "\xE2\x80\x94"};
  for (std::string_view sign : kSigns) {
    if (text.substr(0, sign.size()) == sign) return sign.size();
  }
  return 0;
}

/// `1e3` as `1000`; nothing where that would be too long to read.
std::string without_exponent(std::string_view text) {
  const std::optional<double> value = parse_decimal(text, Exponent::allow);
  if (!value) return {};
  const std::string plain = shortest_text(*value);
  return plain.size() <= 15 ? plain : std::string();
}

ReadNumber refuse_form(const Parts& parts, std::string_view written, Exponent exponent) {
  const std::string sign = parts.negative ? "-" : "";
  const std::string whole = parts.whole.empty() ? "0" : std::string(parts.whole);
  std::string text = sign + whole.substr(std::min(whole.find_first_not_of('0'), whole.size() - 1));
  if (!parts.fraction.empty()) text += "." + std::string(parts.fraction);
  if (parts.fault == NumberFault::exponent) return refused(parts.fault, without_exponent(written));
  const bool clear = parts.fault == NumberFault::leading_zero || parts.fault == NumberFault::bare_point;
  return refused(parts.fault, clear && parts.exponent == 0 ? mended(text, exponent) : std::string());
}

}  // namespace

ReadNumber read_number(std::string_view text, Exponent exponent) {
  if (text.empty()) return refused(NumberFault::empty);
  if (text.size() > kLongestNumber) return refused(NumberFault::too_large);
  if (const std::size_t bytes = foreign_minus(text); bytes > 0) {
    return refused(NumberFault::typographic_minus, mended("-" + std::string(text.substr(bytes)), exponent));
  }
  if (text.front() == '+') return refused(NumberFault::plus_sign, mended(std::string(text.substr(1)), exponent));
  if (text.find(',') != std::string_view::npos) return refuse_comma(text, exponent);
  const Parts parts = split(text, exponent);
  if (parts.fault != NumberFault::none) return refuse_form(parts, text, exponent);

  Digits number;
  number.negative = parts.negative;
  number.digits = std::string(parts.whole) + std::string(parts.fraction);
  number.point = static_cast<int>(parts.whole.size()) + parts.exponent;
  const double value = to_double(number);
  const bool zero = number.digits.find_first_not_of('0') == std::string::npos;
  if (!std::isfinite(value) || (value == 0 && !zero)) return refused(NumberFault::too_large);
  return {zero ? 0.0 : value, static_cast<int>(parts.fraction.size()), NumberFault::none, {}};
}

std::optional<double> parse_decimal(std::string_view text, Exponent exponent) { return read_number(text, exponent).value; }

std::string_view fault_words(NumberFault fault) {
  switch (fault) {
    case NumberFault::none: return "a number";
    case NumberFault::empty: return "nothing";
    case NumberFault::not_a_number: return "no number";
    case NumberFault::decimal_comma: return "a comma in a number";
    case NumberFault::leading_zero: return "a zero in front of a number";
    case NumberFault::bare_point: return "a decimal point without a digit on both sides";
    case NumberFault::plus_sign: return "a plus sign in front of a number";
    case NumberFault::typographic_minus: return "a dash or minus sign other than -";
    case NumberFault::exponent: return "a number with an exponent";
    case NumberFault::too_large: return "a number that is too long or too large";
  }
  return {};
}

std::string fixed_text(double value, int decimals, Trailing trailing, Rounding rounding) {
  if (!std::isfinite(value)) return "?";
  std::string text = laid_out(digits_of(value, kSafeDigits), std::clamp(decimals, 0, kSafeDigits), rounding);
  if (trailing == Trailing::cut) cut_zeros(text);
  return text;
}

std::string shortest_text(double value) {
  if (!std::isfinite(value)) return "?";
  Digits number = digits_of(value, kSafeDigits);
  for (int count = kSafeDigits + 1; count <= kAllDigits && to_double(number) != value; ++count) {
    number = digits_of(value, count);
  }
  const int decimals = std::max(static_cast<int>(number.digits.size()) - number.point, 0);
  std::string text = laid_out(number, decimals, Rounding::half_away);
  cut_zeros(text);
  return text;
}

double tidy(double value) {
  if (!std::isfinite(value) || value == 0) return value;
  return to_double(digits_of(value, kSafeDigits));
}

std::string paper_number(std::string_view number) {
  std::string text;
  if (!number.empty() && number.front() == '-') {
    text = kMinus;
    number.remove_prefix(1);
  }
  const std::size_t whole = std::min(number.find('.'), number.size());
  for (std::size_t i = 0; i < number.size(); ++i) {
    const bool group = whole > 4 && i > 0 && i < whole && (whole - i) % 3 == 0;
    if (group) text += kThinSpace;
    text += number.at(i);
  }
  return text;
}

}  // namespace benchleaf::base
