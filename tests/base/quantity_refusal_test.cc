// What is refused as a quantity, where the fault is placed, what is said and what is offered in its place. The texts are
// slips that contributors make; places are counted by hand in code points.
#include "base/quantity.h"

#include <string>
#include <vector>

#include "base/utf8.h"
#include "support/catch.h"

using namespace benchleaf::base;

namespace {

struct Refusal {
  std::string text;
  QuantityFault fault;
  int offset;
  int length;
  std::string message;
  std::string hint;
};

QuantityError error_of(std::string_view text, const std::vector<Dimension>& wanted) {
  const auto result = wanted.empty() ? parse_quantity(text) : parse_quantity(text, wanted);
  if (std::holds_alternative<Quantity>(result)) FAIL("accepted: " << text);
  return std::get<QuantityError>(result);
}

void check(const std::vector<Refusal>& refusals, const std::vector<Dimension>& wanted) {
  for (const Refusal& refusal : refusals) {
    INFO("text: " << refusal.text);
    const QuantityError error = error_of(refusal.text, wanted);
    CHECK(error.fault == refusal.fault);
    CHECK(error.offset == refusal.offset);
    CHECK(error.length == refusal.length);
    CHECK(error.message == refusal.message);
    CHECK(error.hint == refusal.hint);
    if (!refusal.hint.empty() && refusal.hint.find(' ') != std::string::npos && refusal.fault != QuantityFault::qualifier &&
        wanted.empty() && refusal.hint.find(" or ") == std::string::npos) {
      CHECK(std::holds_alternative<Quantity>(parse_quantity(refusal.hint)));  // an offer must be one that is taken
    }
  }
}

}  // namespace

TEST_CASE("slips in figures", "[quantity][refusal]") {
  check(
      {{"7,9 mm", QuantityFault::number, 0, 3, "found a comma in a number (7,9), expected a number such as 7.9", "7.9 mm"},
       {"1,234 mm", QuantityFault::number, 0, 5, "found a comma in a number (1,234), expected a number such as 7.9",
        "1.234 or 1234"},
       {"010 mm", QuantityFault::number, 0, 3, "found a zero in front of a number (010), expected a number such as 7.9", "10 mm"},
       {".5 mm", QuantityFault::number, 0, 2,
        "found a decimal point without a digit on both sides (.5), expected a number such as 7.9", "0.5 mm"},
       {"5. mm", QuantityFault::number, 0, 2,
        "found a decimal point without a digit on both sides (5.), expected a number such as 7.9", "5 mm"},
       {"1e3 mm", QuantityFault::number, 0, 3, "found a number with an exponent (1e3), expected a number such as 7.9", "1000 mm"},
       {"+5 mm", QuantityFault::number, 0, 2, "found a plus sign in front of a number (+5), expected a number such as 7.9",
        "5 mm"},
       {"−30 °C", QuantityFault::number, 0, 3, "found a dash or minus sign other than - (−30), expected a number such as 7.9",
        "-30 °C"},
       {"1.2.3 mm", QuantityFault::number, 0, 5, "found no number (1.2.3), expected a number such as 7.9", ""},
       {"1/2 mm", QuantityFault::number, 0, 3, "found \"1/2\", expected a decimal number", ""},
       {"1+20", QuantityFault::number, 0, 4, "found \"1+20\", expected a decimal number", ""},
       {"abc", QuantityFault::number, 0, 3, "found \"abc\", expected a number", ""},
       {"mm 7.9", QuantityFault::number, 0, 2, "found \"mm\", expected a number", ""},
       {"- 5 mm", QuantityFault::number, 0, 1, "found \"-\", expected a number", ""},
       {"nan mm", QuantityFault::number, 0, 3, "found \"nan\", expected a number", ""},
       {"4.0 to 4,2 mm", QuantityFault::number, 7, 3, "found a comma in a number (4,2), expected a number such as 7.9",
        "4.0 to 4.2 mm"},
       {"4.0 to x mm", QuantityFault::number, 7, 1, "found \"x\", expected a number", ""}},
      {});
}

TEST_CASE("slips in spaces", "[quantity][refusal]") {
  const std::string odd = "found a space that does not belong, expected single, ordinary spaces";
  check({{"", QuantityFault::empty, 0, 0, "found nothing, expected a quantity", ""},
         {"   ", QuantityFault::empty, 0, 3, "found nothing, expected a quantity", ""},
         {"7.9mm", QuantityFault::spacing, 3, 2, "found no space between the number and \"mm\", expected one", "7.9 mm"},
         {"7,9mm", QuantityFault::spacing, 3, 2, "found no space between the number and \"mm\", expected one", "7.9 mm"},
         {"5%", QuantityFault::spacing, 1, 1, "found no space between the number and \"%\", expected one", "5 %"},
         {"4.0 to 4.2mm", QuantityFault::spacing, 10, 2, "found no space between the number and \"mm\", expected one",
          "4.0 to 4.2 mm"},
         {"7.9  mm", QuantityFault::spacing, 4, 1, odd, "7.9 mm"},
         {" 7.9 mm", QuantityFault::spacing, 0, 1, odd, "7.9 mm"},
         {"7.9 mm ", QuantityFault::spacing, 6, 1, odd, "7.9 mm"},
         {"7.9\xC2\xA0mm", QuantityFault::spacing, 3, 1, odd, "7.9 mm"},
         {"7.9\xE2\x80\x89mm", QuantityFault::spacing, 3, 1, odd, "7.9 mm"},
         {"7.9\tmm", QuantityFault::spacing, 3, 1, odd, "7.9 mm"},
         {"10 000 mm", QuantityFault::grouping, 3, 3,
          "found a second number \"000\", expected a unit, or a number without spaces in it", "10000 mm"},
         {"10\xE2\x80\x89"
          "000 mm",
          QuantityFault::spacing, 2, 1, odd, "10000 mm"},
         {"7.9 5 mm", QuantityFault::grouping, 4, 1,
          "found a second number \"5\", expected a unit, or a number without spaces in it", ""}},
        {});
}

TEST_CASE("slips in units", "[quantity][refusal]") {
  check({{"7.9 MM", QuantityFault::unknown_unit, 4, 2, "found the unknown unit \"MM\"", "7.9 mm"},
         {"80 mah", QuantityFault::unknown_unit, 3, 3, "found the unknown unit \"mah\"", "80 mAh"},
         {"2 ml", QuantityFault::unknown_unit, 2, 2, "found the unknown unit \"ml\"", "2 mL"},
         {"6 volts", QuantityFault::unknown_unit, 2, 5, "found the unknown unit \"volts\"", "6 V"},
         {"7.9 millimeters", QuantityFault::unknown_unit, 4, 11, "found the unknown unit \"millimeters\"", "7.9 mm"},
         {"5 percent", QuantityFault::unknown_unit, 2, 7, "found the unknown unit \"percent\"", "5 %"},
         {"20 ºC", QuantityFault::unknown_unit, 3, 2, "found the unknown unit \"ºC\"", "20 °C"},
         {"3 furlongs", QuantityFault::unknown_unit, 2, 8, "found the unknown unit \"furlongs\"", ""},
         {"7.9 mm wide", QuantityFault::unknown_unit, 7, 4, "found \"wide\" behind the unit, expected nothing more", "7.9 mm"},
         {"7.9 x 5.4 mm", QuantityFault::unknown_unit, 4, 8, "found the unknown unit \"x 5.4 mm\"", ""},
         {"4.0 mm to 4.2 mm", QuantityFault::mixed_units, 4, 2,
          "found the unit \"mm\" before \"to\", expected one unit for both ends, at the end", "4.0 to 4.2 mm"},
         {"4 mm to 0.5 cm", QuantityFault::mixed_units, 2, 2,
          "found the unit \"mm\" before \"to\", expected one unit for both ends, at the end", ""}},
        {});
}

TEST_CASE("slips in ranges and tolerances", "[quantity][refusal]") {
  const std::string dash = "found a range written with a dash, expected \"to\"";
  check({{"4.0-4.2 mm", QuantityFault::range_form, 0, 7, dash, "4.0 to 4.2 mm"},
         {"4.0–4.2 mm", QuantityFault::range_form, 0, 7, dash, "4.0 to 4.2 mm"},
         {"4.0-4.2mm", QuantityFault::range_form, 0, 9, dash, "4.0 to 4.2 mm"},
         {"4.0 - 4.2 mm", QuantityFault::range_form, 4, 1, "found \"-\" between two numbers, expected \"to\"", "4.0 to 4.2 mm"},
         {"4..5 mm", QuantityFault::range_form, 0, 4, "found a range written with dots, expected \"to\"", "4 to 5 mm"},
         {"4.0 to", QuantityFault::range_form, 4, 2, "found nothing behind \"to\", expected a number", ""},
         {"4.2 to 4.0 mm", QuantityFault::range_order, 0, 10,
          "found a range whose first end is the higher one, expected the lower one", "4.0 to 4.2 mm"},
         {"4.0 to 4.0 mm", QuantityFault::range_order, 0, 10, "found a range whose ends are the same", "4.0 mm"},
         {"28.00 ±0.32 mm", QuantityFault::tolerance_form, 6, 5, "found the tolerance before the unit, expected it behind",
          "28.00 mm ±0.32"},
         {"11.6 +0 -0.2 mm", QuantityFault::tolerance_form, 5, 2, "found the tolerance before the unit, expected it behind",
          "11.6 mm +0 -0.2"},
         {"4 -5 mm", QuantityFault::tolerance_form, 2, 2, "found the tolerance before the unit, expected it behind", ""},
         {"28 mm +/-0.3", QuantityFault::tolerance_form, 6, 6, "found \"+/-\", expected \"±\"", "28 mm ±0.3"},
         {"28 mm ± 0.3", QuantityFault::tolerance_form, 6, 1, "found a space behind ±, expected none", "28 mm ±0.3"},
         {"28 mm ±0.3 mm", QuantityFault::tolerance_form, 11, 2, "found \"mm\" behind the tolerance, expected nothing more",
          "28 mm ±0.3"},
         {"80 mAh ±10 %", QuantityFault::tolerance_form, 11, 1, "found \"%\" behind the tolerance, expected nothing more", ""},
         {"11.6 mm -0.2 +0", QuantityFault::tolerance_form, 8, 4, "found \"-0.2\", expected the plus side first",
          "11.6 mm +0 -0.2"},
         {"11.6 mm +0.2", QuantityFault::tolerance_form, 8, 4, "found one side of a tolerance, expected +a -b or ±a",
          "11.6 mm +0.2 -0"},
         {"11.6 mm -0.2", QuantityFault::tolerance_form, 8, 4, "found one side of a tolerance, expected +a -b or ±a",
          "11.6 mm +0 -0.2"},
         {"11.6 mm +0 −0.2", QuantityFault::tolerance_form, 11, 4, "found a dash or minus sign other than -", "11.6 mm +0 -0.2"},
         {"11.6 mm +0.3 +0.1", QuantityFault::tolerance_form, 13, 4, "found \"+0.1\", expected the minus side, such as -0.2", ""},
         {"4.0 to 4.2 mm ±0.1", QuantityFault::tolerance_form, 14, 4,
          "found a tolerance behind a range, expected one or the other", ""}},
        {});
}

TEST_CASE("vague words and other words for nothing", "[quantity][refusal]") {
  const std::string state = "state a range (4 to 5 mm) or a tolerance (4 mm +0.5 -0)";
  check({{"about 5 mm", QuantityFault::qualifier, 0, 5, "found \"about\", expected a number", state},
         {"ca. 5 mm", QuantityFault::qualifier, 0, 3, "found \"ca.\", expected a number", state},
         {"~5 mm", QuantityFault::qualifier, 0, 1, "found \"~\", expected a number", state},
         {"< 5 mm", QuantityFault::qualifier, 0, 1, "found \"<\", expected a number", state},
         {"≥5 mm", QuantityFault::qualifier, 0, 1, "found \"≥\", expected a number", state}},
        {});
  const auto words = [](const std::string& text) {
    return "found \"" + text + "\", expected a quantity, not stated, not known or none";
  };
  check({{"unknown", QuantityFault::state_word, 0, 7, words("unknown"), "not known"},
         {"n/a", QuantityFault::state_word, 0, 3, words("n/a"), "none"},
         {"Not stated", QuantityFault::state_word, 0, 10, words("Not stated"), "not stated"},
         {"-", QuantityFault::state_word, 0, 1, words("-"), "not known"}},
        {});
}

TEST_CASE("what does not belong in its place", "[quantity][refusal]") {
  const std::string lengths = "m, cm, mm, µm, nm or in";
  check({{"7.9", QuantityFault::missing_unit, 0, 3, "found a number without a unit, expected a length, such as 7.9 mm",
          "add the unit: " + lengths},
         {"1.55 V", QuantityFault::wrong_dimension, 0, 6, "found a voltage, expected a length, such as 7.9 mm",
          "give it in " + lengths},
         {"3 furlongs", QuantityFault::unknown_unit, 2, 8, "found the unknown unit \"furlongs\"", "known here: " + lengths},
         {"-1 mm", QuantityFault::negative, 0, 5, "found a length below zero, expected zero or more", ""},
         {"0.1 mm ±0.2", QuantityFault::negative, 0, 11, "found a length below zero, expected zero or more", ""}},
        {Dimension::length});
  check({{"5 %", QuantityFault::wrong_dimension, 0, 3, "found a ratio, expected a concentration, such as 5 % w/w",
          "give it in % w/w, % v/v, % w/v, g/L, mg/m³ or mol/L"}},
        {Dimension::concentration});
  check({{"7 mm", QuantityFault::wrong_dimension, 0, 4, "found a length, expected a number, such as 1.4",
          "write the number alone"}},
        {Dimension::number});
  check({{"-300 °C", QuantityFault::negative, 0, 7, "found a temperature below absolute zero (-273.15 °C)", ""},
         {"-270 °C ±5", QuantityFault::negative, 0, 10, "found a temperature below absolute zero (-273.15 °C)", ""},
         {"-1 K", QuantityFault::negative, 0, 4, "found a temperature below absolute zero (-273.15 °C)", ""}},
        {Dimension::temperature});
  check({{"5 mm", QuantityFault::wrong_dimension, 0, 4, "found a length, expected a ratio or a rate, such as 2.5 %",
          "give it in %, ‰, ppm or s/d"}},
        {Dimension::ratio, Dimension::rate});
}

TEST_CASE("hostile texts are refused without harm", "[quantity][refusal]") {
  for (const std::string& text : {std::string(100000, '1'),  std::string(100000, ' '),   std::string(100000, '+'),
                                  std::string("7.9\0mm", 6), std::string("\xFF\xFE"),    std::string("7.9 \xE2\x88"),
                                  std::string("±"),          std::string("+"),           std::string("+/-"),
                                  std::string("1 ±"),        std::string("1 mm ±"),      std::string("1 mm +"),
                                  std::string("1 mm +1 ±"),  std::string("1 to 2 to 3"), std::string("to"),
                                  std::string("to to to"),   std::string("1 to -"),      std::string("1e"),
                                  std::string("1-"),         std::string("1--2"),        std::string("1 mm +1 -1e999"),
                                  std::string("..5"),        std::string("-..5"),        std::string(",,,,")}) {
    INFO("text: " << text.substr(0, 20));
    const auto result = parse_quantity(text);
    REQUIRE(std::holds_alternative<QuantityError>(result));
    CHECK(first_invalid_utf8(std::get<QuantityError>(result).message) == std::nullopt);
  }
}
