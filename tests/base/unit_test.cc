// Units and dimensions, each line held against GNU units (program `units`), and the words for units that are not known.
#include "base/unit.h"

#include <cmath>
#include <cstdlib>
#include <set>
#include <string>

#include "support/catch.h"

#include "base/number.h"
#include "base/utf8.h"
#include "outside_tool.h"

using namespace benchleaf::base;

namespace {

/// How many `to` GNU units finds in `from`; not a number where they do not conform.
double gnu_units(const std::string& from, const std::string& to) {
  const std::vector<std::string> lines = lines_of("LC_ALL=C units -t -o '%.17g' '" + from + "' '" + to + "' 2>&1");
  if (lines.size() != 1) return std::nan("");
  char* rest = nullptr;
  const double value = std::strtod(lines.front().c_str(), &rest);
  return *rest == '\0' ? value : std::nan("");
}

/// A value in the unit, as GNU units writes it: `tempC(20)` where there is an offset, else `20 (mm)`.
std::string gnu_value(const UnitInfo& unit, const std::string& value) {
  if (unit.offset != 0) return std::string(unit.gnu) + "(" + value + ")";
  return value + " (" + std::string(unit.gnu) + ")";
}

std::string gnu_powers(const Exponents& powers) {
  return "m^" + std::to_string(powers.length) + " kg^" + std::to_string(powers.mass) + " s^" + std::to_string(powers.time) +
         " A^" + std::to_string(powers.current) + " K^" + std::to_string(powers.temperature) + " mol^" +
         std::to_string(powers.amount);
}

}  // namespace

TEST_CASE("each line of units.def agrees with GNU units", "[unit][gnu]") {
  for (const UnitInfo& unit : all_units()) {
    INFO("unit " << unit.name);
    const std::string si(dimension_info(unit.dimension).si);
    for (double value : {1.0, 37.25}) {
      const double expected = gnu_units(gnu_value(unit, shortest_text(value)), si);
      CHECK(to_si(value, unit.unit) == Approx(expected).epsilon(1e-14).margin(0));
      CHECK(from_si(to_si(value, unit.unit), unit.unit) == Approx(value).epsilon(1e-13).margin(0));
    }
  }
}

TEST_CASE("each line of dimensions.def agrees with GNU units", "[unit][gnu]") {
  for (const DimensionInfo& dimension : all_dimensions()) {
    INFO("dimension " << dimension.text);
    CHECK(gnu_units(std::string(dimension.si), gnu_powers(dimension.exponents)) == 1.0);
    CHECK(dimension_info(dimension.base).exponents == dimension.exponents);
  }
}

TEST_CASE("symbols and spellings are unique and are read", "[unit]") {
  std::set<std::string> seen;
  for (const UnitInfo& unit : all_units()) {
    CHECK(seen.insert(std::string(unit.symbol)).second);
    CHECK(unit_named(unit.symbol) == unit.unit);
    CHECK(is_nfc(unit.symbol));
  }
  CHECK(unit_named("\xC2\xB5m") == Unit::micrometre);  // micro sign
  CHECK(unit_named("\xCE\xBCm") == Unit::micrometre);  // Greek mu
  CHECK(unit_named("um") == Unit::micrometre);
  CHECK(unit_named("kohm") == Unit::kilohm);
  CHECK(unit_named("\xE2\x84\xA6") == Unit::ohm);  // ohm sign
  CHECK(unit_named("g/cm3") == Unit::gram_per_cubic_centimetre);
  CHECK(unit_named("W/m/K") == Unit::watt_per_metre_kelvin);
  CHECK(unit_named("a") == Unit::year);
  CHECK(unit_named("years") == Unit::year);
  CHECK(unit_named("MM") == std::nullopt);
}

TEST_CASE("the unit that was meant is found", "[unit]") {
  CHECK(unit_meant("ml") == Unit::millilitre);
  CHECK(unit_meant("MM") == Unit::millimetre);
  CHECK(unit_meant("mah") == Unit::milliampere_hour);
  CHECK(unit_meant("millimetres") == Unit::millimetre);
  CHECK(unit_meant("millimeter") == Unit::millimetre);
  CHECK(unit_meant("Volts") == Unit::volt);
  CHECK(unit_meant("degrees Celsius") == Unit::degree_celsius);
  CHECK(unit_meant("inches") == Unit::inch);
  CHECK(unit_meant("percent") == Unit::percent);
  CHECK(unit_meant("kg/m^3") == Unit::kilogram_per_cubic_metre);
  CHECK(unit_meant("\xC2\xBA"
                   "C") == Unit::degree_celsius);
  CHECK(unit_meant("%w/w") == Unit::percent_by_mass);
  CHECK(unit_meant("min.") == Unit::minute);
  CHECK(unit_meant("furlong") == std::nullopt);
  CHECK(unit_meant("q") == std::nullopt);
  CHECK(unit_meant("") == std::nullopt);
}

TEST_CASE("dimensions are found by the names that shapes use", "[unit]") {
  CHECK(dimension_named("length") == Dimension::length);
  CHECK(dimension_named("molar-mass") == Dimension::molar_mass);
  CHECK(dimension_named("thermal-conductivity") == Dimension::thermal_conductivity);
  CHECK(dimension_named("lenght") == std::nullopt);
}

TEST_CASE("fields accept what belongs to them", "[unit]") {
  CHECK(accepts(Dimension::concentration, Dimension::mass_fraction));
  CHECK(accepts(Dimension::concentration, Dimension::amount_concentration));
  CHECK_FALSE(accepts(Dimension::concentration, Dimension::ratio));
  CHECK_FALSE(accepts(Dimension::ratio, Dimension::mass_fraction));
  CHECK(accepts(Dimension::stress, Dimension::pressure));
  CHECK_FALSE(accepts(Dimension::density, Dimension::mass_concentration));
  CHECK(accepts(Dimension::rate, Dimension::ratio));
  CHECK(convertible(Unit::gram_per_litre, Unit::gram_per_millilitre));
  CHECK_FALSE(convertible(Unit::percent_by_mass, Unit::percent_by_volume));
  CHECK_FALSE(convertible(Unit::one, Unit::percent));
  CHECK_FALSE(convertible(Unit::hertz, Unit::percent_per_year));
}
