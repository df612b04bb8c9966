#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/unit.h"

namespace benchleaf::base {

enum class QuantityForm {
  value,       ///< `7.9 mm`
  range,       ///< `4.0 to 4.2 mm`
  toleranced,  ///< `11.6 mm +0 -0.2`, `28.00 mm ±0.32`
  not_stated,
  not_known,
  none,
};

/// Nominal value and ends. All three are the same for a plain value; the nominal of a range is its middle.
struct Interval {
  double nominal = 0;
  double low = 0;
  double high = 0;
};

/// A value as a contributor wrote it. Made by parse_quantity; compute with `in`, print with `printed` or `terminal`.
struct Quantity {
  QuantityForm form = QuantityForm::not_stated;
  Unit unit = Unit::one;               ///< as written
  Interval stated;                     ///< in `unit`; zeros for the three state words
  int decimals = 0;                    ///< most digits after the point among the figures as written
  std::string written;                 ///< the whole text as written
  std::array<std::string, 3> figures;  ///< as written: value | low, high | value, plus, minus (the same twice after ±)

  bool has_value() const { return form <= QuantityForm::toleranced; }
  /// Whether ends were stated; a plain value has no tolerance, which makes results nominal only.
  bool has_ends() const { return form == QuantityForm::range || form == QuantityForm::toleranced; }
  Dimension dimension() const { return unit_info(unit).dimension; }
  /// The value in another unit; nothing for a state word or where the units do not convert. In the unit as written the
  /// figures come back as they were.
  std::optional<Interval> in(Unit other) const;
  /// The nominal of `in`.
  std::optional<double> value_in(Unit other) const;
};

/// What is wrong with a text that ought to be a quantity.
enum class QuantityFault {
  empty,
  number,    ///< a figure is no number: decimal comma, leading zero, ... (NumberFault says which)
  grouping,  ///< `10 000 mm`
  spacing,   ///< no space before the unit, two spaces, a space of another kind
  missing_unit,
  unknown_unit,
  mixed_units,     ///< `4 mm to 0.5 cm`, or the unit twice
  range_form,      ///< `4-5 mm`, `4 - 5 mm`, `4..5 mm`
  range_order,     ///< low end above the high end, or both the same
  tolerance_form,  ///< `±0.3` before the unit, `+/-`, a unit or a sign where none belongs
  qualifier,       ///< `about 5 mm`, `< 5 mm`, `~5 mm`
  state_word,      ///< `unknown`, `n/a`, `Not stated`
  wrong_dimension,
  negative,  ///< below zero, or below absolute zero, where that cannot be
};

struct QuantityError {
  QuantityFault fault = QuantityFault::empty;
  int offset = 0;       ///< code points from the start of the text
  int length = 0;       ///< code points at fault
  std::string message;  ///< lower case: what was found, then what was expected
  std::string hint;     ///< the value written well, or one action, or empty
};

/// Reads a quantity. A plain number has Unit::one.
std::variant<Quantity, QuantityError> parse_quantity(std::string_view text);
/// Whether a quantity may stand where one of these dimensions is asked for; a state word always may, and
/// with no dimensions named everything.
std::optional<QuantityError> check_quantity(const Quantity& quantity, const std::vector<Dimension>& wanted);
/// Both in one: reads a quantity that must be of one of the dimensions; hints name their units.
std::variant<Quantity, QuantityError> parse_quantity(std::string_view text, const std::vector<Dimension>& wanted);

/// As set on paper: figures as written with U+2212 and thin spaces, `4.0 to 4.2 mm`, `7 years`, `not stated`.
std::string printed(const Quantity& quantity);
/// The same for the terminal and JSON: `-`, plain spaces, no grouping, so that it can be typed in again.
std::string terminal(const Quantity& quantity);

/// A figure with its unit as set on paper, for derived values: figure as fixed_text makes it.
std::string printed(std::string_view figure, Unit unit);
/// `4.0 to 4.2 mm` as set on paper.
std::string printed_range(std::string_view low, std::string_view high, Unit unit);
/// The terminal's form of a text set for paper: U+2212 to `-`, thin space to a plain one (between digits: to nothing).
std::string to_terminal(std::string_view printed);

}  // namespace benchleaf::base
