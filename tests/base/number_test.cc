// Numbers: what is read and refused, rounding held against Python's decimal module, and independence of the locale.
#include "base/number.h"

#include <clocale>
#include <cmath>
#include <cstdlib>
#include <limits>
#include <string>
#include <vector>

#include "support/catch.h"

#include "outside_tool.h"

using namespace benchleaf::base;

namespace {

struct Refusal {
  const char* text;
  NumberFault fault;
  const char* hint;
};

}  // namespace

TEST_CASE("decimal numbers are read to the nearest double", "[number]") {
  CHECK(parse_decimal("7.9") == 7.9);
  CHECK(parse_decimal("0") == 0.0);
  CHECK(parse_decimal("-30") == -30.0);
  CHECK(parse_decimal("0.005") == 0.005);
  CHECK(parse_decimal("12.50") == 12.5);
  CHECK(read_number("12.50").decimals == 2);
  CHECK(read_number("12").decimals == 0);
  CHECK(parse_decimal("10000") == 10000.0);
  CHECK_FALSE(std::signbit(*parse_decimal("-0.00")));
  // IEEE 754, ties to even: 2^53 + 1 has no double of its own
  CHECK(parse_decimal("9007199254740993") == 9007199254740992.0);
  CHECK(parse_decimal("9007199254740995") == 9007199254740996.0);
  CHECK(parse_decimal("1.3e-5", Exponent::allow) == 1.3e-5);
  CHECK(parse_decimal("1E+3", Exponent::allow) == 1000.0);
}

TEST_CASE("what is no number is refused, with the right spelling where it is clear", "[number]") {
  const std::vector<Refusal> refusals = {
      {"", NumberFault::empty, ""},
      {"7,9", NumberFault::decimal_comma, "7.9"},
      {"-7,9", NumberFault::decimal_comma, "-7.9"},
      {"0,123", NumberFault::decimal_comma, "0.123"},
      {"1,234", NumberFault::decimal_comma, "1.234 or 1234"},
      {"1,234,567", NumberFault::decimal_comma, "1234567"},
      {"1,234.5", NumberFault::decimal_comma, ""},
      {",", NumberFault::decimal_comma, ""},
      {"010", NumberFault::leading_zero, "10"},
      {"-00.5", NumberFault::leading_zero, "-0.5"},
      {"00", NumberFault::leading_zero, "0"},
      {".5", NumberFault::bare_point, "0.5"},
      {"-.5", NumberFault::bare_point, "-0.5"},
      {"5.", NumberFault::bare_point, "5"},
      {".", NumberFault::not_a_number, ""},
      {"+5", NumberFault::plus_sign, "5"},
      {"\xE2\x88\x92"
       "5",
       NumberFault::typographic_minus, "-5"},
      {"\xE2\x80\x93"
       "5",
       NumberFault::typographic_minus, "-5"},
      {"1e3", NumberFault::exponent, "1000"},
      {"1e-3", NumberFault::exponent, "0.001"},
      {"1e300", NumberFault::exponent, ""},
      {"1.2.3", NumberFault::not_a_number, ""},
      {"inf", NumberFault::not_a_number, ""},
      {"nan", NumberFault::not_a_number, ""},
      {"0x1F", NumberFault::not_a_number, ""},
      {"-", NumberFault::not_a_number, ""},
      {"--5", NumberFault::not_a_number, ""},
      {" 5", NumberFault::not_a_number, ""},
      {"5 ", NumberFault::not_a_number, ""},
      {"1'000", NumberFault::not_a_number, ""},
      {"e5", NumberFault::not_a_number, ""},
      {"\xD9\xA5", NumberFault::not_a_number, ""},  // Arabic-Indic five
      {"11111111112222222222333333333344444444445", NumberFault::too_large, ""},
  };
  for (const Refusal& refusal : refusals) {
    INFO("text: " << refusal.text);
    const ReadNumber read = read_number(refusal.text);
    CHECK(read.fault == refusal.fault);
    CHECK_FALSE(read.value.has_value());
    CHECK(read.hint == refusal.hint);
  }
  CHECK(read_number("1e999", Exponent::allow).fault == NumberFault::too_large);
  CHECK(read_number("1e-999", Exponent::allow).fault == NumberFault::too_large);
  CHECK(read_number("1e99999999999", Exponent::allow).fault == NumberFault::too_large);
}

TEST_CASE("rounding goes half away from zero on the decimal number that is meant", "[number]") {
  // worked by hand: 2.675 and 1.005 lie below the half in binary, and are halves to any reader
  CHECK(fixed_text(2.675, 2) == "2.68");
  CHECK(fixed_text(1.005, 2) == "1.01");
  CHECK(fixed_text(-2.5, 0) == "-3");
  CHECK(fixed_text(0.5, 0) == "1");
  CHECK(fixed_text(0.49999, 0) == "0");
  CHECK(fixed_text(-0.4, 0) == "0");
  CHECK(fixed_text(-0.04, 1) == "0.0");
  CHECK(fixed_text(9.995, 2) == "10.00");
  CHECK(fixed_text(0.1 + 0.2, 1, Trailing::keep, Rounding::up) == "0.3");
  CHECK(fixed_text(1.21, 1, Trailing::keep, Rounding::up) == "1.3");
  CHECK(fixed_text(-1.29, 1, Trailing::keep, Rounding::up) == "-1.2");
  CHECK(fixed_text(1.29, 1, Trailing::keep, Rounding::down) == "1.2");
  CHECK(fixed_text(-1.21, 1, Trailing::keep, Rounding::down) == "-1.3");
  CHECK(fixed_text(0.0001, 1, Trailing::keep, Rounding::up) == "0.1");
  CHECK(fixed_text(7.9, 3) == "7.900");
  CHECK(fixed_text(7.9, 3, Trailing::cut) == "7.9");
  CHECK(fixed_text(100.0, 0, Trailing::cut) == "100");
  CHECK(fixed_text(100.0, 2, Trailing::cut) == "100");
  CHECK(fixed_text(1e21, 0) == "1000000000000000000000");
  CHECK(fixed_text(std::numeric_limits<double>::quiet_NaN(), 2) == "?");
  CHECK(fixed_text(std::numeric_limits<double>::infinity(), 2) == "?");
}

TEST_CASE("rounding agrees with Python's decimal module", "[number]") {
  // random.seed makes the same 4000 numbers each time; %.15g and quantize are Python's own
  const std::string script = R"(
import random
from decimal import *
random.seed(754)
for i in range(4000):
    value = random.choice([-1, 1]) * random.randrange(10**random.randrange(1, 16)) / 10**random.randrange(0, 12)
    places = random.randrange(0, 7)
    mode, name = random.choice([(ROUND_HALF_UP, 0), (ROUND_CEILING, 1), (ROUND_FLOOR, 2)])
    text = format(Decimal('%.15g' % value).quantize(Decimal(1).scaleb(-places), mode, Context(prec=60)), 'f')
    if Decimal(text) == 0: text = text.lstrip('-')
    print(value.hex(), places, name, text, repr(value) if 'e' not in repr(value) else '-')
)";
  const std::vector<std::string> lines = lines_of("python3 -c \"" + script + "\"");
  REQUIRE(lines.size() == 4000);
  for (const std::string& line : lines) {
    char* rest = nullptr;
    const double value = std::strtod(line.c_str(), &rest);
    const int places = static_cast<int>(std::strtol(rest, &rest, 10));
    const auto mode = static_cast<Rounding>(std::strtol(rest, &rest, 10));
    const std::string tail = rest + 1;
    const std::string expected = tail.substr(0, tail.find(' '));
    const std::string shortest = tail.substr(tail.find(' ') + 1);
    if (fixed_text(value, places, Trailing::keep, mode) != expected)
      FAIL(line << " gave " << fixed_text(value, places, Trailing::keep, mode));
    const std::string plain = shortest_text(value);
    if (shortest != "-" && plain != shortest && plain + ".0" != shortest && shortest != "-0.0") FAIL(line << " gave " << plain);
  }
}

TEST_CASE("the shortest text reads back as the same double", "[number]") {
  CHECK(shortest_text(7.9) == "7.9");
  CHECK(shortest_text(0.1 + 0.2) == "0.30000000000000004");
  CHECK(shortest_text(-0.0) == "0");
  CHECK(shortest_text(1e-7) == "0.0000001");
  CHECK(shortest_text(123456.0) == "123456");
  CHECK(tidy(0.1 + 0.2) == 0.3);
  CHECK(tidy(11.6 - 0.2) == 11.4);
}

TEST_CASE("paper sets U+2212 and groups above 9,999", "[number]") {
  CHECK(paper_number("9999") == "9999");
  CHECK(paper_number("10000") ==
        "10\xE2\x80\x89"
        "000");
  CHECK(paper_number("1234567.12345") ==
        "1\xE2\x80\x89"
        "234\xE2\x80\x89"
        "567.12345");
  CHECK(paper_number("-30") ==
        "\xE2\x88\x92"
        "30");
  CHECK(paper_number("-12345") ==
        "\xE2\x88\x92"
        "12\xE2\x80\x89"
        "345");
  CHECK(paper_number("0.00001") == "0.00001");
}

TEST_CASE("a locale with a decimal comma changes nothing", "[number][locale]") {
  const std::string made = lines_of("d=$(mktemp -d) && localedef -i de_DE -f UTF-8 $d/de_DE.UTF-8 2>&1 >&2; echo $d").back();
  REQUIRE(setenv("LOCPATH", made.c_str(), 1) == 0);
  REQUIRE(std::setlocale(LC_ALL, "de_DE.UTF-8") != nullptr);
  const bool comma = std::string(std::localeconv()->decimal_point) == ",";
  const auto value = parse_decimal("7.9");
  const std::string fixed = fixed_text(1234.5, 2);
  const std::string shortest = shortest_text(0.125);
  const double tidied = tidy(0.1 + 0.2);
  std::setlocale(LC_ALL, "C");
  unsetenv("LOCPATH");
  lines_of("rm -r '" + made + "'");
  CHECK(comma);
  CHECK(value == 7.9);
  CHECK(fixed == "1234.50");
  CHECK(shortest == "0.125");
  CHECK(tidied == 0.3);
}
