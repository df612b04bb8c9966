// Out: one line for each of many numbers and quantities, worked out by base. Built twice, by this compiler and by the
// browser's, and run twice: the two outputs must be the same to the last digit.
#include <cstdio>
#include <string>
#include <variant>

#include "base/id.h"
#include "base/number.h"
#include "base/quantity.h"
#include "base/sha256.h"
#include "base/utf8.h"

using namespace benchleaf::base;

namespace {

void say(const std::string& text) { std::printf("%s\n", text.c_str()); }

void numbers() {
  unsigned long long state = 754;
  for (int i = 0; i < 2000; ++i) {
    state = state * 6364136223846793005ULL + 1442695040888963407ULL;
    const double value = static_cast<double>(state >> 11) / static_cast<double>(1ULL << (i % 60));
    say(shortest_text(value) + " " + fixed_text(value, i % 9) + " " + shortest_text(tidy(value / 3)) + " " +
        fixed_text(-value, i % 9, Trailing::cut, Rounding::up) + " " + paper_number(fixed_text(value, 2)));
  }
}

void quantity(const std::string& text) {
  const auto result = parse_quantity(text);
  const std::string shown = to_utf8(code_points(text));
  if (const auto* error = std::get_if<QuantityError>(&result)) {
    say(shown + " | " + error->message + " | " + error->hint);
    return;
  }
  const Quantity& read = std::get<Quantity>(result);
  std::string line = shown + " | " + printed(read) + " | " + terminal(read);
  for (const UnitInfo& unit : all_units()) {
    const auto interval = read.in(unit.unit);
    if (!interval) continue;
    line += " | " + shortest_text(interval->low) + " " + shortest_text(interval->nominal) + " " + shortest_text(interval->high);
  }
  say(line);
}

void quantities() {
  for (const UnitInfo& unit : all_units()) {
    const std::string symbol = unit.unit == Unit::one ? "" : " " + std::string(unit.symbol);
    for (const std::string figure : {"1", "7.90", "0.05", "12345.678"}) {
      quantity(figure + symbol);
      quantity("0.01 to " + figure + symbol);
      quantity(figure + symbol + " +0 -0.003");
      quantity(figure + symbol + "x");
    }
  }
  for (const std::string text : {"not stated", "7,9 mm", "7.9mm", "−5 °C", "4-5 mm", "80 mah", "about 5 mm", "\xFF", ""})
    quantity(text);
}

}  // namespace

int main() {
  numbers();
  quantities();
  say(sha256("abc") + " " + nearest_word("crystel", {"cell", "crystal"}) + " " + std::to_string(display_width("µm 電")));
  return 0;
}
