// Checks of the designation grammar. Outside source: the form `[cells in series] SYSTEM R SIZE [suffix]` and the example names
// SR626SW, LR44, CR2032, 4SR44 as encyclopaedia articles on IEC 60086 and battery sizes print them.

#include "support/catch.h"

#include <string>

#include "standards/designation.h"

using benchleaf::standards::Designation;
using benchleaf::standards::DesignationError;
using benchleaf::standards::parse_designation;

namespace {

Designation parsed(std::string_view text) {
  const auto result = parse_designation(text);
  INFO("designation " << text);
  REQUIRE(std::holds_alternative<Designation>(result));
  return std::get<Designation>(result);
}

DesignationError refused(std::string_view text) {
  const auto result = parse_designation(text);
  INFO("designation " << text);
  REQUIRE(std::holds_alternative<DesignationError>(result));
  return std::get<DesignationError>(result);
}

}  // namespace

TEST_CASE("encyclopaedia examples come apart into their parts") {
  const auto silver = parsed("SR626SW");
  CHECK(silver.in_series == 1);
  CHECK(silver.system == "S");
  CHECK(silver.size == "626");
  CHECK(silver.suffix == "SW");
  CHECK_FALSE(silver.short_form());

  CHECK(parsed("LR44").size == "44");
  CHECK(parsed("LR44").short_form());
  CHECK(parsed("CR2032").size == "2032");
  CHECK(parsed("4SR44").in_series == 4);
  CHECK(parsed("4SR44").system == "S");
}

TEST_CASE("text() gives back what was read, in capitals and without spaces") {
  for (const char* text : {"SR754W", "LR44", "4SR44", "CR2032", "SR41SW", "CR11108"}) CHECK(parsed(text).text() == text);
  CHECK(parsed("sr754sw").text() == "SR754SW");
  CHECK(parsed("SR 754 SW").text() == "SR754SW");
  CHECK(parsed("4SR44").with_size("1154") == "4SR1154");
}

TEST_CASE("a letter among the digits is named with its place") {
  const auto error = refused("SR2O32");
  CHECK(error.position == 3);
  CHECK(error.reason.find("letter O") != std::string::npos);
  CHECK(error.hint == "write the digit 0");
  CHECK(refused("LRI154").position == 2);
}

TEST_CASE("a foreign letter is refused at its code point") {
  const auto error = refused(
      "S\xD0\xA0"
      "754W");  // U+0420, Cyrillic, looks like R
  CHECK(error.position == 1);
  CHECK(error.reason.find("outside A to Z") != std::string::npos);
}

TEST_CASE("what is no round cell's designation is refused with a reason") {
  CHECK(refused("").reason == "a designation is empty");
  CHECK(refused("R44").reason.find("zinc-carbon") != std::string::npos);
  CHECK(refused("LF22").reason.find("only round cells") != std::string::npos);
  CHECK(refused("SR").reason == "no size after R");
  CHECK(refused("SR4").reason.find("1 digits") != std::string::npos);
  CHECK(refused("SR043").position == 2);
  CHECK(refused("1SR44").position == 0);
  CHECK(refused("SR44W2").position == 5);
  CHECK(refused("SR44-W").reason == "'-' stands in the designation");
  CHECK(refused("393").reason == "393 is a number, not a designation");
  CHECK(refused("123SR44").reason.find("cells in series") != std::string::npos);
}
