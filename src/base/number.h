#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace benchleaf::base {

// The one place where decimal text and double meet. No function reads or depends on the locale, whoever sets it.

/// Why a text is no number as contributors write them.
enum class NumberFault {
  none,
  empty,
  not_a_number,       ///< a letter, a second point, `inf`, `nan`, a lone sign
  decimal_comma,      ///< `7,9`
  leading_zero,       ///< `010`
  bare_point,         ///< `.5` or `5.`
  plus_sign,          ///< `+5`
  typographic_minus,  ///< U+2212 or a dash in place of `-`
  exponent,           ///< `1e3` where exponents are not asked for
  too_large,          ///< outside what a double can hold, or more than 40 characters
};

struct ReadNumber {
  std::optional<double> value;
  int decimals = 0;  ///< digits after the point as written
  NumberFault fault = NumberFault::empty;
  std::string hint;  ///< how the number ought to be written (`7.9`), or empty where that is not clear
};

enum class Exponent { refuse, allow };

/// Reads `-12.50`: digits with a decimal point, no grouping, no sign but `-`, no leading zero. The value is the double
/// nearest to the text.
ReadNumber read_number(std::string_view text, Exponent exponent = Exponent::refuse);
/// The value of read_number alone.
std::optional<double> parse_decimal(std::string_view text, Exponent exponent = Exponent::refuse);
/// Words for messages: `a decimal comma`.
std::string_view fault_words(NumberFault fault);

enum class Trailing { keep, cut };            ///< zeros at the end: `7.90` or `7.9`
enum class Rounding { half_away, up, down };  ///< up: towards +infinity, down: towards -infinity

/// A number with `decimals` (0 to 15) digits after the point, never `-0`. The double is first read as the decimal number
/// of 15 significant digits that it stands for, so 2.675 gives 2.68 and noise in the last bits moves no digit. Not a
/// number or infinite: `?`.
std::string fixed_text(double value, int decimals, Trailing trailing = Trailing::keep, Rounding rounding = Rounding::half_away);
/// The shortest decimal text, without exponent, that reads back as the same double. Not a number or infinite: `?`.
std::string shortest_text(double value);
/// The double nearest to the 15 significant digits: takes away what arithmetic in binary has left in the last bits.
double tidy(double value);

/// A number as set on paper and screen: U+2212 for `-`, above 9,999 digits in threes with thin spaces U+2009.
std::string paper_number(std::string_view number);

inline constexpr std::string_view kThinSpace = "\xE2\x80\x89";
inline constexpr std::string_view kMinus = "\xE2\x88\x92";

}  // namespace benchleaf::base
