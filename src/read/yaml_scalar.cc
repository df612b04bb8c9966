// In: the text of a plain scalar. Out: its type by the core schema of YAML 1.2.2, section 10.3.2, and the forms that
// the subset refuses because two readers of YAML differ about them.
#include "read/yaml_scalar.h"

#include <algorithm>
#include <array>

#include "base/number.h"

namespace benchleaf::read {

namespace {

using model::NodeType;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

template <std::size_t N>
bool is_one_of(std::string_view text, const std::array<std::string_view, N>& words) {
  return std::find(words.begin(), words.end(), text) != words.end();
}

std::string_view without_sign(std::string_view text) {
  if (!text.empty() && (text.front() == '-' || text.front() == '+')) text.remove_prefix(1);
  return text;
}

/// Takes digits from the front and tells how many.
std::size_t take_digits(std::string_view& text) {
  std::size_t count = 0;
  while (count < text.size() && is_digit(text.at(count))) ++count;
  text.remove_prefix(count);
  return count;
}

/// `[eE][-+]?[0-9]+` or nothing; false where something else is left.
bool is_exponent_or_end(std::string_view text) {
  if (text.empty()) return true;
  if (text.front() != 'e' && text.front() != 'E') return false;
  text = without_sign(text.substr(1));
  return take_digits(text) > 0 && text.empty();
}

}  // namespace

NodeType plain_scalar_type(std::string_view text) {
  static constexpr std::array<std::string_view, 6> kTruth = {"true", "True", "TRUE", "false", "False", "FALSE"};
  if (is_null_word(text)) return NodeType::null;
  if (is_one_of(text, kTruth)) return NodeType::boolean;
  std::string_view rest = without_sign(text);
  std::size_t digits = take_digits(rest);
  if (digits > 0 && rest.empty()) return NodeType::integer;
  if (!rest.empty() && rest.front() == '.') {
    rest.remove_prefix(1);
    digits += take_digits(rest);
  }
  return digits > 0 && is_exponent_or_end(rest) ? NodeType::number : NodeType::string;
}

bool has_leading_zero(std::string_view text) {
  std::string_view digits = without_sign(text);
  bool zero_then_digit = digits.size() > 1 && digits.at(0) == '0' && is_digit(digits.at(1));
  if (!zero_then_digit) return false;
  NodeType type = plain_scalar_type(text);
  return type == NodeType::integer || type == NodeType::number;
}

bool is_odd_number(std::string_view text) {
  static constexpr std::array<std::string_view, 3> kInfinite = {".inf", ".Inf", ".INF"};
  static constexpr std::array<std::string_view, 3> kNotNumber = {".nan", ".NaN", ".NAN"};
  if (is_one_of(without_sign(text), kInfinite) || is_one_of(text, kNotNumber)) return true;
  const NodeType type = plain_scalar_type(text);
  if (type == NodeType::integer || type == NodeType::number) return !base::parse_decimal(text, base::Exponent::allow);
  if (text.size() < 3 || text.at(0) != '0') return false;
  std::string_view digits = text.substr(2);
  if (text.at(1) == 'o') return digits.find_first_not_of("01234567") == std::string_view::npos;
  if (text.at(1) == 'x') return digits.find_first_not_of("0123456789abcdefABCDEF") == std::string_view::npos;
  return false;
}

bool is_null_word(std::string_view text) {
  static constexpr std::array<std::string_view, 5> kNothing = {"", "~", "null", "Null", "NULL"};
  return is_one_of(text, kNothing);
}

}  // namespace benchleaf::read
