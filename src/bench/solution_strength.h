#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/unit.h"
#include "bench/ask.h"
#include "standards/solution.h"

namespace benchleaf::bench {

/// A strength as it was written: % w/v, % v/v or % w/w.
struct Strength {
  Amount amount;
  base::Unit unit = base::Unit::percent_mass_by_volume;
};

/// Densities of one substance in water, of the table solution-densities.
struct Solution {
  standards::SolutionCurve curve;
  std::vector<Amount> rows;  ///< the density of each point

  /// What a density between these shares by mass rests on.
  Amount rests_on(double from, double to) const;
  /// Whether the curve goes up to the substance alone.
  bool whole() const { return curve.back().by_mass >= 1; }
};

/// Nothing where the table has no rows of the substance, `substance/ID`.
std::optional<Solution> solution_of(const Ask& ask, const std::string& substance);

/// A strength of an input in the kind of per cent that was written; a bare `%` counts as mass in volume, and the answer says so.
/// Nothing, and a fault, where it is none.
std::optional<Strength> read_strength(Ask& ask, const char* input, Plausible plausible);

/// The strength that a record states at `path`.
std::optional<Strength> stated_strength(const Ask& ask, const std::string& record, const std::string& path);

/// Grams of the substance in a millilitre. By volume it takes the density of the pure substance, by mass that of the solution:
/// nothing where that is not on file or the table ends below.
std::optional<Amount> grams_in_millilitre(const Ask& ask, const Strength& strength, const std::string& substance);

}  // namespace benchleaf::bench
