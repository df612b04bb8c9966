// Normalisation Form C against the test data of Unicode 15.0 (NormalizationTest.txt), folding by hand-made words.
#include "base/utf8.h"

#include <cstdlib>
#include <string>
#include <vector>

#include "support/catch.h"

#include "outside_tool.h"

using namespace benchleaf::base;

namespace {

/// `0044 0307` as UTF-8.
std::string from_codes(const std::string& field) {
  std::string text;
  for (std::size_t at = 0; at < field.size(); at += 1) {
    const std::size_t end = std::min(field.find(' ', at), field.size());
    text += to_utf8(static_cast<char32_t>(std::strtoul(field.substr(at, end - at).c_str(), nullptr, 16)));
    at = end;
  }
  return text;
}

std::vector<std::string> fields(const std::string& line) {
  std::vector<std::string> found;
  for (std::size_t at = 0; found.size() < 5;) {
    const std::size_t end = line.find(';', at);
    if (end == std::string::npos) break;
    found.push_back(line.substr(at, end - at));
    at = end + 1;
  }
  return found;
}

}  // namespace

TEST_CASE("NFC as NormalizationTest.txt of Unicode 15.0 asks", "[nfc]") {
  int rows = 0;
  for (const std::string& line : lines_of("bzcat /usr/share/unicode/NormalizationTest.txt.bz2")) {
    if (line.empty() || line.front() == '#' || line.front() == '@') continue;
    const std::vector<std::string> columns = fields(line);
    REQUIRE(columns.size() == 5);
    const std::string c1 = from_codes(columns[0]), c2 = from_codes(columns[1]), c3 = from_codes(columns[2]);
    const std::string c4 = from_codes(columns[3]), c5 = from_codes(columns[4]);
    const bool composed = to_nfc(c1) == c2 && to_nfc(c2) == c2 && to_nfc(c3) == c2 && to_nfc(c4) == c4 && to_nfc(c5) == c4;
    const bool told = is_nfc(c1) == (c1 == c2) && is_nfc(c2) && is_nfc(c3) == (c3 == c2);
    if (!composed || !told) FAIL(line);
    ++rows;
  }
  CHECK(rows > 18000);
}

TEST_CASE("ill-formed text has no normal form", "[nfc]") {
  CHECK_FALSE(is_nfc("ab\xFF"));
  CHECK(to_nfc("ab\xFF") == "ab\xFF");
  CHECK(fold("ab\xFF") == "ab\xFF");
}

TEST_CASE("folding evens out case, marks and compatibility forms", "[fold]") {
  CHECK(fold("Öl") == "ol");
  CHECK(fold("SR754W") == "sr754w");
  CHECK(fold("Stra\xC3\x9F"
             "e") == "strasse");
  CHECK(fold("m³") == "m3");
  CHECK(fold("µm") == fold("\xCE\xBCm"));           // micro sign and Greek mu
  CHECK(fold("\xE2\x84\xA6") == fold("\xCE\xA9"));  // ohm sign and omega
  CHECK(fold("e\xCC\x81") == "e");
  CHECK(fold("co\xC2\xADoperate") == "cooperate");  // soft hyphen
}
