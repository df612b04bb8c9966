// Quantities: forms, values, conversion, printed forms. Values are worked by hand; conversions rest on units.def, which
// unit_test.cc holds against GNU units.
#include "base/quantity.h"

#include <string>
#include <vector>

#include "support/catch.h"

#include "base/number.h"

using namespace benchleaf::base;

namespace {

Quantity read(std::string_view text) {
  const auto result = parse_quantity(text);
  if (const auto* error = std::get_if<QuantityError>(&result)) FAIL(std::string(text) << ": " << error->message);
  return std::get<Quantity>(result);
}

}  // namespace

TEST_CASE("a plain value", "[quantity]") {
  const Quantity q = read("7.9 mm");
  CHECK(q.form == QuantityForm::value);
  CHECK(q.unit == Unit::millimetre);
  CHECK(q.stated.nominal == 7.9);
  CHECK(q.stated.low == 7.9);
  CHECK(q.stated.high == 7.9);
  CHECK(q.decimals == 1);
  CHECK(q.written == "7.9 mm");
  CHECK(q.value_in(Unit::millimetre) == 7.9);
  CHECK(q.value_in(Unit::metre) == 0.0079);
  CHECK(q.value_in(Unit::micrometre) == 7900.0);
  CHECK(q.value_in(Unit::volt) == std::nullopt);
  CHECK(q.has_value());
  CHECK_FALSE(q.has_ends());
}

TEST_CASE("a range and a tolerance", "[quantity]") {
  const Quantity range = read("4.0 to 4.2 mm");
  CHECK(range.form == QuantityForm::range);
  CHECK(range.stated.low == 4.0);
  CHECK(range.stated.high == 4.2);
  CHECK(range.stated.nominal == 4.1);
  CHECK(range.decimals == 1);
  CHECK(range.has_ends());

  const Quantity sides = read("11.6 mm +0 -0.2");
  CHECK(sides.form == QuantityForm::toleranced);
  CHECK(sides.stated.nominal == 11.6);
  CHECK(sides.stated.low == 11.4);
  CHECK(sides.stated.high == 11.6);

  const Quantity even = read("28.00 mm ±0.32");
  CHECK(even.stated.low == 27.68);
  CHECK(even.stated.high == 28.32);
  CHECK(even.decimals == 2);
  CHECK(read("0.3 mm ±0.1").stated.low == 0.2);  // 0.3 - 0.1 in binary is less

  const Quantity cold = read("-30 to 100 °C");
  CHECK(cold.in(Unit::kelvin)->low == 243.15);
  CHECK(cold.in(Unit::kelvin)->high == 373.15);
  CHECK(cold.in(Unit::degree_fahrenheit)->low == -22.0);
  CHECK(read("1.4 ±0.1").stated.high == 1.5);
}

TEST_CASE("a tolerance of a temperature is a difference", "[quantity]") {
  const Quantity q = read("20 °C ±5");
  CHECK(q.in(Unit::kelvin)->low == 288.15);
  CHECK(q.in(Unit::kelvin)->high == 298.15);
}

TEST_CASE("words in place of a value", "[quantity]") {
  for (const auto& [text, form] : std::vector<std::pair<std::string, QuantityForm>>{
           {"not stated", QuantityForm::not_stated}, {"not known", QuantityForm::not_known}, {"none", QuantityForm::none}}) {
    const Quantity q = read(text);
    CHECK(q.form == form);
    CHECK_FALSE(q.has_value());
    CHECK(q.value_in(Unit::one) == std::nullopt);
    CHECK(printed(q) == text);
    CHECK(terminal(q) == text);
    CHECK_FALSE(check_quantity(q, {Dimension::length}).has_value());
  }
}

TEST_CASE("printed on paper and at the terminal", "[quantity]") {
  const std::string thin = "\xE2\x80\x89", minus = "\xE2\x88\x92";
  struct Row {
    std::string written, paper, terminal;
  };
  const std::vector<Row> rows = {
      {"7.90 mm", "7.90" + thin + "mm", "7.90 mm"},
      {"4.0 to 4.2 mm", "4.0 to 4.2" + thin + "mm", "4.0 to 4.2 mm"},
      {"11.6 mm +0 -0.2", "11.6" + thin + "mm +0 " + minus + "0.2", "11.6 mm +0 -0.2"},
      {"28.00 mm ±0.32", "28.00" + thin + "mm ±0.32", "28.00 mm ±0.32"},
      {"-30 to 100 °C", minus + "30 to 100" + thin + "°C", "-30 to 100 °C"},
      {"12500 ohm", "12" + thin + "500" + thin + "Ω", "12500 Ω"},
      {"2 um", "2" + thin + "µm", "2 µm"},
      {"7 a", "7" + thin + "years", "7 years"},
      {"1 a", "1" + thin + "year", "1 year"},
      {"6 month", "6" + thin + "months", "6 months"},
      {"2 to 4 % per year", "2 to 4" + thin + "%" + thin + "per" + thin + "year", "2 to 4 % per year"},
      {"5 % w/v", "5" + thin + "%" + thin + "w/v", "5 % w/v"},
      {"1.4", "1.4", "1.4"},
      {"0.19 W/m/K", "0.19" + thin + "W/(m" + thin + "K)", "0.19 W/(m K)"},
  };
  for (const Row& row : rows) {
    INFO(row.written);
    CHECK(printed(read(row.written)) == row.paper);
    CHECK(terminal(read(row.written)) == row.terminal);
  }
  CHECK(printed("5.40", Unit::millimetre) == "5.40" + thin + "mm");
  CHECK(printed_range("-1", "12345", Unit::one) == minus + "1 to 12" + thin + "345");
}

TEST_CASE("a quantity printed for the terminal reads as the same quantity", "[quantity]") {
  // every unit, all forms, figures of several lengths
  for (const UnitInfo& unit : all_units()) {
    for (const std::string figure : {"1", "0.05", "7.90", "12345", "1234.5678"}) {
      const std::string symbol = unit.unit == Unit::one ? "" : " " + std::string(unit.symbol);
      for (const std::string& text :
           {figure + symbol, "0.01 to " + figure + symbol, figure + symbol + " +0 -0.01", figure + symbol + " ±0.005"}) {
        INFO(text);
        const Quantity first = read(text);
        const Quantity again = read(terminal(first));
        CHECK(again.form == first.form);
        CHECK(again.unit == first.unit);
        CHECK(again.stated.nominal == first.stated.nominal);
        CHECK(again.stated.low == first.stated.low);
        CHECK(again.stated.high == first.stated.high);
        CHECK(again.decimals == first.decimals);
        CHECK(first.stated.low <= first.stated.nominal);
        CHECK(first.stated.nominal <= first.stated.high);
      }
    }
  }
}

TEST_CASE("there and back through another unit gives the same value", "[quantity]") {
  for (const UnitInfo& from : all_units()) {
    for (const UnitInfo& to : all_units()) {
      if (!convertible(from.unit, to.unit)) continue;
      const double value = 37.25;
      const double there = tidy(from_si(to_si(value, from.unit), to.unit));
      const double back = from_si(to_si(there, to.unit), from.unit);
      INFO(from.name << " to " << to.name);
      CHECK(back == Approx(value).epsilon(1e-12).margin(0));
    }
  }
}

TEST_CASE("dimensions take what belongs to them", "[quantity]") {
  const auto fits = [](std::string_view text, Dimension dimension) {
    return std::holds_alternative<Quantity>(parse_quantity(text, {dimension}));
  };
  for (const DimensionInfo& dimension : all_dimensions()) {
    INFO(dimension.text);
    CHECK(fits(dimension.example, dimension.dimension));
  }
  CHECK(fits("5 % v/v", Dimension::concentration));
  CHECK(fits("0.1 mol/L", Dimension::concentration));
  CHECK(fits("72 GPa", Dimension::stress));
  CHECK(fits("-0.5 s/d", Dimension::rate));
  CHECK(fits("7 a", Dimension::time));
  CHECK(std::holds_alternative<Quantity>(parse_quantity("5 %", {Dimension::concentration, Dimension::ratio})));
}
