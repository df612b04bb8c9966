#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::base {

/// What a value measures, one per line of dimensions.def; `length`, `molar-mass`, ... are the names that shapes use.
enum class Dimension {
#define BENCHLEAF_DIMENSION(name, text, base, length, mass, time, current, temperature, amount, negative, si, example) name,
#include "base/dimensions.def"
#undef BENCHLEAF_DIMENSION
};

/// One per line of units.def: `Unit::millimetre`. `Unit::one` is that of plain numbers.
enum class Unit {
#define BENCHLEAF_UNIT(name, symbol, spellings, dimension, numerator, denominator, offset, gnu) name,
#include "base/units.def"
#undef BENCHLEAF_UNIT
};

/// Powers of the SI base units.
struct Exponents {
  int length = 0;
  int mass = 0;
  int time = 0;
  int current = 0;
  int temperature = 0;
  int amount = 0;

  friend bool operator==(const Exponents&, const Exponents&) = default;
};

struct DimensionInfo {
  Dimension dimension;
  std::string_view text;  ///< `molar-mass`
  Dimension base;         ///< values convert into each other where this is the same
  Exponents exponents;
  bool may_be_negative;
  std::string_view si;       ///< the coherent unit, as GNU units writes it
  std::string_view example;  ///< a well-written value
};

struct UnitInfo {
  Unit unit;
  std::string_view name;       ///< `percent_by_mass`
  std::string_view symbol;     ///< as printed: `% w/w`
  std::string_view spellings;  ///< what is read besides, parted by |
  Dimension dimension;
  double numerator;  ///< SI value = (value + offset) * numerator / denominator
  double denominator;
  double offset;
  std::string_view gnu;  ///< the same for GNU units
};

const DimensionInfo& dimension_info(Dimension dimension);
const UnitInfo& unit_info(Unit unit);
const std::vector<UnitInfo>& all_units();
const std::vector<DimensionInfo>& all_dimensions();

/// The dimension a shape names in x-quantity, or nothing.
std::optional<Dimension> dimension_named(std::string_view text);
/// The unit with this symbol or spelling, or nothing.
std::optional<Unit> unit_named(std::string_view text);
/// The unit that was probably meant by an unknown spelling (`mAH`, `millimetres`), or nothing.
std::optional<Unit> unit_meant(std::string_view text);

/// Whether a field of dimension `wanted` takes a unit of dimension `found`: a concentration is one of four, stress and
/// pressure share their units, a rate may be written as a ratio.
bool accepts(Dimension wanted, Dimension found);
/// Whether values convert from one unit to the other.
bool convertible(Unit from, Unit to);

inline constexpr double kMillimetresPerInch = 25.4;  // exact, by the definition of the inch

/// A value in `unit` as a value in the coherent SI unit, and back.
double to_si(double value, Unit unit);
double from_si(double si, Unit unit);

}  // namespace benchleaf::base
