#pragma once

#include <optional>
#include <string>

namespace benchleaf::bench {

/// A mark of gold as it is stamped, taken apart.
struct GoldMark {
  std::string letters;                ///< small, single spaces, no stops: `gf`, `rolled gold plate`
  std::optional<double> micrometres;  ///< a figure behind the letters or in front of its unit
  bool has_unit = false;              ///< the figure is in micrometres by its own words
  std::string karat;                  ///< `14K`
  bool by_weight = false;             ///< `1/20`
};

/// Reads `GP 20`, `GR10`, `20 microns`, `GP 20 \u00B5m`, `14K GF`, `1/20 10K GF`, `R.G.P.`.
GoldMark read_gold_mark(const std::string& text);

}  // namespace benchleaf::bench
