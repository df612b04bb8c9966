// In: two texts. Out: which one comes first for a reader who counts.

#include "derive/natural_order.h"

#include <cstddef>

#include "base/ascii.h"

namespace benchleaf::derive {
namespace {

/// Takes the digits at the front of a text, without leading zeros.
std::string_view take_number(std::string_view& text) {
  std::size_t end = 0;
  while (end < text.size() && base::is_digit(text[end])) ++end;
  std::string_view digits = text.substr(0, end);
  text.remove_prefix(end);
  while (digits.size() > 1 && digits.front() == '0') digits.remove_prefix(1);
  return digits;
}

int compare_numbers(std::string_view one, std::string_view other) {
  if (one.size() != other.size()) return one.size() < other.size() ? -1 : 1;
  return one.compare(other);
}

}  // namespace

bool natural_less(std::string_view one, std::string_view other) {
  const std::string_view whole_one = one;
  const std::string_view whole_other = other;
  while (!one.empty() && !other.empty()) {
    if (base::is_digit(one.front()) && base::is_digit(other.front())) {
      const int order = compare_numbers(take_number(one), take_number(other));
      if (order != 0) return order < 0;
    } else if (one.front() != other.front()) {
      return static_cast<unsigned char>(one.front()) < static_cast<unsigned char>(other.front());
    } else {
      one.remove_prefix(1);
      other.remove_prefix(1);
    }
  }
  if (one.empty() != other.empty()) return one.empty();
  return whole_one < whole_other;
}

}  // namespace benchleaf::derive
