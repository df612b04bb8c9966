#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bench/ask.h"

namespace benchleaf::bench {

/// A grade of an abrasive scale with its median grain.
struct Grade {
  std::string name;   ///< `P800`, `#1000`, `800`
  std::string scale;  ///< P, F, JIS, ANSI, cushion, micrometre
  Amount median;      ///< micrometres
};

/// All grades of a scale, coarsest first; scale: an abrasive's id or its short name (`P`). A fault where there is none.
std::vector<Grade> grades_of_scale(Ask& ask, std::string_view input, const std::string& scale);

/// The grade of a name, `P800`, `#1000`, or of scale and figures, `ANSI 800`. A fault where there is none, and where a bare
/// number stands on several scales: 800 is four grains.
std::optional<Grade> grade_named(Ask& ask, std::string_view input, const std::string& name);

}  // namespace benchleaf::bench
