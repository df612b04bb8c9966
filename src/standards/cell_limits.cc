// In: the largest measures of a cell, what was measured on one, the table cell-size-limits. Out: between what the cell can
// measure, and whether the measured one can be it.

#include "standards/cell_limits.h"

#include <algorithm>
#include <cmath>

#include "base/number.h"

namespace benchleaf::standards {
namespace {

using base::Unit;

constexpr double kSlip = 1e-9;          // of binary fractions
constexpr double kMostReading = 0.127;  // mm, half a hundredth of an inch: a rule read by eye

/// A row in millimetres.
struct Row {
  std::string size;
  double diameter_max = 0, diameter_min = 0, height_max = 0, height_min = 0;
};

double millimetres(const base::Quantity& quantity) { return quantity.value_in(Unit::millimetre).value_or(0); }

std::vector<Row> rows_in(const model::Tables& tables) {
  std::vector<Row> rows;
  for (const auto& limit : tables.cell_size_limits) {
    rows.push_back({limit.size, millimetres(limit.diameter_max), millimetres(limit.diameter_min), millimetres(limit.height_max),
                    millimetres(limit.height_min)});
  }
  return rows;
}

const Row& nearest(const std::vector<Row>& rows, double Row::*measure, double value) {
  return *std::min_element(rows.begin(), rows.end(), [&](const Row& one, const Row& other) {
    return std::abs(one.*measure - value) < std::abs(other.*measure - value) - kSlip;
  });
}

/// How far an interval lies below or above another; 0 where they meet.
double gap(const base::Interval& reading, double low, double high) {
  return std::max({0.0, low - reading.high, reading.low - high});
}

}  // namespace

CellLimits cell_limits(const CellSize& largest, const model::Tables& tables) {
  CellLimits limits{largest.diameter, largest.diameter, largest.height, largest.height, {}, false};
  const auto rows = rows_in(tables);
  if (rows.empty()) return limits;
  for (const Row& row : rows) {
    if (!same_size(largest, {row.diameter_max, row.height_max})) continue;
    return {row.diameter_min, std::max(row.diameter_max, largest.diameter),
            row.height_min,   std::max(row.height_max, largest.height),
            row.size,         true};
  }
  const Row& as_wide = nearest(rows, &Row::diameter_max, largest.diameter);
  const Row& as_tall = nearest(rows, &Row::height_max, largest.height);
  limits.diameter_min = base::tidy(largest.diameter - (as_wide.diameter_max - as_wide.diameter_min));
  limits.height_min = base::tidy(largest.height - (as_tall.height_max - as_tall.height_min));
  limits.row = as_tall.size;
  return limits;
}

base::Interval reading_of(const base::Quantity& quantity) {
  base::Interval reading = quantity.in(Unit::millimetre).value_or(base::Interval{});
  if (quantity.has_ends()) return reading;
  const double place = base::from_si(base::to_si(std::pow(10.0, -quantity.decimals), quantity.unit), Unit::millimetre);
  const double half = std::min(place / 2, kMostReading);
  reading.low = base::tidy(reading.nominal - half);
  reading.high = base::tidy(reading.nominal + half);
  return reading;
}

double distance(const MeasuredCell& measured, const CellLimits& limits) {
  return gap(measured.diameter, limits.diameter_min, limits.diameter_max) +
         gap(measured.height, limits.height_min, limits.height_max);
}

std::string size_by_limits(const MeasuredCell& measured, const model::Tables& tables) {
  for (const Row& row : rows_in(tables)) {
    const CellLimits limits{row.diameter_min, row.diameter_max, row.height_min, row.height_max, row.size, true};
    if (distance(measured, limits) <= kSlip) return row.size;
  }
  return {};
}

MeasuredFit measured_fit(const MeasuredCell& measured, const CellLimits& limits, double swelling) {
  if (distance(measured, limits) <= kSlip) return MeasuredFit::within;
  const bool too_small = measured.diameter.high < limits.diameter_min - kSlip || measured.height.high < limits.height_min - kSlip;
  const bool too_large = measured.diameter.low > limits.diameter_max + swelling + kSlip ||
                         measured.height.low > limits.height_max + swelling + kSlip;
  return too_small || too_large ? MeasuredFit::no : MeasuredFit::oversize;
}

}  // namespace benchleaf::standards
