#pragma once

#include <string>
#include <variant>
#include <vector>

#include "model/tables.h"
#include "standards/designation.h"

namespace benchleaf::standards {

/// A designation read with the tables. The pointers lead into the tables it was read with.
struct CellCode {
  Designation designation;
  const model::CellSystem* system = nullptr;         ///< never null
  const model::CellDiameter* diameter = nullptr;     ///< never null
  const model::CellShortForm* short_form = nullptr;  ///< the row of this size, or nullptr
  std::string long_size;                             ///< 754
  int tenths = 0;                                    ///< 54: height in tenths of a millimetre, cut off
  std::vector<const model::CellSuffix*> suffixes;    ///< letters that the table knows, in their order
  std::string unknown_suffix;                        ///< letters that it does not
  const model::CellDrain* drain = nullptr;           ///< how the trade reads the suffix, or nullptr
  bool long_height = false;                          ///< three digits of height, a form from memory
};

/// Reads a designation with the tables; a system, short size or diameter code that no table has is an error.
std::variant<CellCode, DesignationError> read_cell_code(const Designation& designation, const model::Tables& tables);

/// The heights that the digits can stand for: from `low`, up to, not including, `below`. Millimetres.
struct HeightRange {
  double low = 0;
  double below = 0;
};
HeightRange height_range(int tenths);

/// Code and digits that a size in millimetres gets: both cut off, never rounded.
struct SizeCode {
  int code = 0;
  int tenths = 0;
  friend bool operator==(const SizeCode&, const SizeCode&) = default;
};
SizeCode size_code(double diameter_mm, double height_mm);

/// Largest diameter and height of a cell as its record states them, in millimetres.
struct CellSize {
  double diameter = 0;
  double height = 0;
};

/// Whether two cells have one size: the same diameter code, and the same height digits or heights that lie no further
/// apart than published lists do for one size.
bool same_size(const CellSize& one, const CellSize& other);

/// 2.05 in one list is 2.1 in another.
inline constexpr double kHeightTolerance = 0.05;

}  // namespace benchleaf::standards
