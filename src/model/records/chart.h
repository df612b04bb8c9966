#pragma once

#include <string>
#include <vector>

#include "model/record.h"

namespace benchleaf::model {

/// One sheet for the bench.
struct Chart : Record {
  struct Panel {
    std::string title;
    std::string shows;                 ///< cell-numbers, cell-sizes, cell-swap, gasket-sizes, material-matrix, ...
    std::vector<std::string> records;  ///< `kind/id`
    std::string words;
    int keep = 0;  ///< the higher, the later it is dropped
  };

  std::string subtitle;
  std::vector<std::string> papers;  ///< a4, letter, a3, tabloid
  std::string orientation;          ///< portrait, landscape
  std::vector<Panel> panels;
};

}  // namespace benchleaf::model
