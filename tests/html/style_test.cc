// The style sheet: it loads nothing, and its colours can be told apart. Thresholds and the formula of contrast: WCAG 2.2,
// success criteria 1.4.3 (text 4.5:1) and 1.4.11 (parts of controls 3:1), definition of relative luminance.
#include "html/assets.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

#include "support/catch.h"

namespace benchleaf::html_tests {

namespace {

using Tokens = std::map<std::string, std::string>;

/// The custom properties with a colour as value in the rule that starts at `from`.
Tokens colours(std::string_view sheet, std::size_t from) {
  Tokens found;
  const std::string_view rule = sheet.substr(from, sheet.find('}', from) - from);
  for (std::size_t at = rule.find("--"); at != std::string_view::npos; at = rule.find("--", at + 2)) {
    const std::size_t colon = rule.find(':', at);
    const std::size_t hash = rule.find_first_not_of(' ', colon + 1);
    if (rule.at(hash) == '#')
      found[std::string(rule.substr(at + 2, colon - at - 2))] = std::string(rule.substr(hash, rule.find(';', hash) - hash));
  }
  return found;
}

double channel(const std::string& colour, std::size_t which) {
  const std::string digits = colour.size() == 4 ? std::string(2, colour.at(1 + which)) : colour.substr(1 + 2 * which, 2);
  const double c = std::stoi(digits, nullptr, 16) / 255.0;
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double luminance(const std::string& colour) {
  return 0.2126 * channel(colour, 0) + 0.7152 * channel(colour, 1) + 0.0722 * channel(colour, 2);
}

double contrast(const std::string& one, const std::string& other) {
  const double a = luminance(one), b = luminance(other);
  return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

void check_pairs(const Tokens& tokens) {
  for (const char* text : {"ink", "second", "accent"}) {
    for (const char* ground : {"paper", "field"}) {
      INFO(text << " on " << ground);
      CHECK(contrast(tokens.at(text), tokens.at(ground)) >= 4.5);
    }
  }
  CHECK(contrast(tokens.at("on-accent"), tokens.at("accent")) >= 4.5);
  // Figures write on metal in light, and metal in shade lies beside it.
  CHECK(contrast(tokens.at("ink"), tokens.at("light")) >= 4.5);
  CHECK(contrast(tokens.at("light"), tokens.at("dark")) >= 1.5);
}

}  // namespace

TEST_CASE("text has enough contrast by day and by night", "[html]") {
  // Black on white is 21:1 by definition.
  CHECK(contrast("#000", "#ffffff") == Approx(21));
  const std::string_view sheet = html::assets().front().text;
  const std::size_t day = sheet.find(":root"), night = sheet.find(":root", sheet.find("prefers-color-scheme: dark"));
  REQUIRE(night != std::string_view::npos);
  const Tokens light = colours(sheet, day);
  check_pairs(light);
  check_pairs(colours(sheet, night));
  for (const char* ground : {"red", "blue"}) CHECK(contrast("#fff", light.at(ground)) >= 4.5);
  for (const char* ground : {"orange", "yellow"}) CHECK(contrast(light.at("safety-ink"), light.at(ground)) >= 4.5);
}

TEST_CASE("the style sheet is whole and loads nothing", "[html]") {
  const std::string_view sheet = html::assets().front().text;
  for (const char* loading : {"url(", "@import", "http", "@font-face"}) CHECK(sheet.find(loading) == std::string_view::npos);
  CHECK(std::count(sheet.begin(), sheet.end(), '{') == std::count(sheet.begin(), sheet.end(), '}'));
  CHECK(sheet.find("@media print") != std::string_view::npos);
}

}  // namespace benchleaf::html_tests
