#pragma once

#include <string>
#include <vector>

#include "model/record.h"

namespace benchleaf::model {

/// One sheet for the bench.
struct Chart : Record {
  /// A line that says one thing: its key, then the words.
  struct Row {
    std::string key;
    std::string words;
  };
  /// A picture that compose knows how to draw, and what it tells.
  struct Picture {
    std::string name;
    std::string words;
  };
  struct Panel {
    std::string title;
    std::string note;    ///< small words beside the title
    std::string shows;   ///< what compose fills it with: cell-numbers, material-matrix, ...
    References records;  ///< `kind/id`
    std::string words;
    std::vector<Row> rows;
    std::vector<Picture> pictures;
    int keep = 1;        ///< 1 is never dropped; the higher, the sooner
    bool spare = false;  ///< may be left out of a paper that has no room
    int side = 1;        ///< of the sheet, 1 or 2
    int small_side = 1;  ///< the same on A4 and Letter; 0: not on these
    bool wide = false;   ///< over all columns
  };

  std::string subtitle;
  std::vector<std::string> papers;  ///< a4, letter, a3, tabloid
  std::optional<Orientation> orientation;
  std::vector<Panel> panels;
};

}  // namespace benchleaf::model
