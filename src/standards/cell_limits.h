#pragma once

#include <string>

#include "base/quantity.h"
#include "model/tables.h"
#include "standards/cell_code.h"

namespace benchleaf::standards {

/// Between what a cell of one size can measure when new, mm.
struct CellLimits {
  double diameter_min = 0, diameter_max = 0;
  double height_min = 0, height_max = 0;
  std::string row;     ///< key of the row of cell-size-limits that gave them: `R41`, or the one nearest in size
  bool exact = false;  ///< whether the row is of this very size; else its tolerances are taken over
};

/// The limits of a cell whose record states its largest measures: those of its row in the table cell-size-limits, else the
/// tolerances of the row that is nearest in that measure.
CellLimits cell_limits(const CellSize& largest, const model::Tables& tables);

/// What was read off a cell, mm, with what the reading leaves open.
struct MeasuredCell {
  base::Interval diameter, height;
};

/// A reading with half of its last place to either side, up to half a hundredth of an inch; ends that were stated stand.
base::Interval reading_of(const base::Quantity& quantity);

/// How a measured cell stands to the limits of a size.
enum class MeasuredFit {
  within,    ///< it can be a cell of this size
  oversize,  ///< larger than a new one, by no more than old ones swell
  no,
};

/// `swelling` in mm: how much more than a new one an old cell can measure.
MeasuredFit measured_fit(const MeasuredCell& measured, const CellLimits& limits, double swelling);

/// The size of the table cell-size-limits, `R41`, between whose limits a reading lies; empty where it lies in none.
std::string size_by_limits(const MeasuredCell& measured, const model::Tables& tables);

/// How far a reading lies outside the limits, mm, both measures together; 0 within.
double distance(const MeasuredCell& measured, const CellLimits& limits);

}  // namespace benchleaf::standards
