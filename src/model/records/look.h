#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "model/marks.h"
#include "model/record.h"

namespace benchleaf::model {

/// A line of the ticket: a look, a reading with its healthy figure, a word on what is never done.
struct Look : Record {
  std::string place;            ///< never, first, reading, closing, waits, emergency, card, waste, by-jobs
  int order = 0;                ///< in its place
  std::vector<Condition> when;  ///< any of these; empty: always
  References jobs;              ///< `procedure/ID`: only where one of them is done; on their sheets where the place is by-jobs
  std::string head;             ///< what it speaks of: a place on the watch, a job; or empty
  std::string text;             ///< the line, with slots in braces: `{cell}`
  std::string unit;             ///< behind the blank of a reading
  int blanks = 0;               ///< lines to write on
  std::string per;              ///< cell: the blanks are one a cell
  std::string healthy;          ///< figure beside the blank, with its own basis, slots allowed
  RecordRef caution;            ///< `caution/ID` that says the same in full, or empty
};

}  // namespace benchleaf::model
