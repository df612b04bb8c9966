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

/// What a grade typed by a user can be: one where it names its scale, several where it is a bare number.
std::vector<Grade> grades_named(Ask& ask, std::string_view input, const std::string& name);

/// The coarsest and the finest of a non-empty list.
const Grade& coarsest(const std::vector<Grade>& grades);
const Grade& finest(const std::vector<Grade>& grades);

/// `P 21.8 µm, JIS 14 µm`: what a bare number can be.
std::string scales_text(const std::vector<Grade>& grades);

}  // namespace benchleaf::bench
