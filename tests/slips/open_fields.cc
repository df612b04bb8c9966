// In: tests/slips/open_fields.txt, `kinds | fields | reason` a line. Out: which slips are open, and why.

#include "slips/open_fields.h"

#include <fstream>
#include <string_view>

#include "support/catch.h"

namespace benchleaf::test {
namespace {

/// Whether a text has the form of a pattern, in which `*` stands for any stretch.
bool fits(std::string_view pattern, std::string_view text) {
  if (pattern.empty()) return text.empty();
  if (pattern.front() != '*') return !text.empty() && pattern.front() == text.front() && fits(pattern.substr(1), text.substr(1));
  return fits(pattern.substr(1), text) || (!text.empty() && fits(pattern, text.substr(1)));
}

/// Whether a text has the form of one of the patterns of a list `a, b`.
bool fits_one(std::string_view list, std::string_view text) {
  constexpr std::string_view kComma = ", ";
  while (true) {
    const std::size_t end = list.find(kComma);
    if (fits(list.substr(0, end), text)) return true;
    if (end == std::string_view::npos) return false;
    list.remove_prefix(end + kComma.size());
  }
}

}  // namespace

bool OpenField::covers(const Slip& slip) const { return fits_one(kinds, name_of(slip.kind)) && fits_one(fields, slip.field); }

std::vector<OpenField> open_fields() {
  std::ifstream file("tests/slips/open_fields.txt");
  std::vector<OpenField> list;
  for (std::string line; std::getline(file, line);) {
    if (line.empty() || line.front() == '#') continue;
    constexpr std::string_view kBar = " | ";
    const std::size_t first = line.find(kBar), second = line.find(kBar, first + 1);
    INFO(line);
    REQUIRE(second != std::string::npos);
    list.push_back({line.substr(0, first), line.substr(first + kBar.size(), second - first - kBar.size()),
                    line.substr(second + kBar.size())});
  }
  return list;
}

}  // namespace benchleaf::test
