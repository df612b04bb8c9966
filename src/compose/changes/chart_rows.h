#pragma once

#include <string>
#include <vector>

#include "compose/changes/changes.h"
#include "model/sheet.h"

namespace benchleaf::compose {

/// One row of a chart, as its reader tells it from the next.
struct ChartRow {
  std::string id;                  ///< `chart/cells#By number: 393`
  std::string text;                ///< what stands behind the key, cells parted by ` | `, signs of trust in brackets
  std::vector<std::string> facts;  ///< ids of the facts it prints and of the records it leads to
};

/// All rows of all charts, in order. What a chart says on its large and on its small papers stands there once.
std::vector<ChartRow> chart_rows(const State& state);

}  // namespace benchleaf::compose
