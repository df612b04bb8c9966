// In: prose. Out: the same, figures kept with their units (SI Brochure, section 5.4.3: a space parts them).
#include "page/joined_units.h"

#include "base/unit.h"

namespace benchleaf::page {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

bool unit_begins(std::string_view text) {
  const std::string_view word = text.substr(0, text.find_first_of(" ,.;:!?)"));
  return !word.empty() && base::unit_named(word).has_value();
}

}  // namespace

std::string with_units_joined(std::string_view text) {
  std::string joined;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool between = text[i] == ' ' && i > 0 && is_digit(text[i - 1]) && unit_begins(text.substr(i + 1));
    if (between) {
      joined += "\u00A0";
    } else {
      joined += text[i];
    }
  }
  return joined;
}

}  // namespace benchleaf::page
