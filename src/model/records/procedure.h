#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "model/record.h"

namespace benchleaf::model {

/// Work in steps. References in steps are `kind/id`, or a slot of this procedure as it is written: `$crystal`.
struct Procedure : Record {
  struct Slot {
    std::string name;
    std::string asks;
    References allowed;  ///< `kind/id`
  };
  /// A caution in its place, or a step: exactly one of `caution` and `text` is set.
  struct Step {
    RecordRef caution;  ///< `caution/ID`
    std::string text;   ///< `do`
    References tools;   ///< `using`: `tool/ID`
    References on;
    References with;
    std::string grade;
    References reaches;
    References meets;
    bool rinse = false;
    std::string see;
    std::vector<std::string> how;      ///< ways of working, as ways.h lists them; empty: what liquid and tools imply
    std::optional<base::Quantity> at;  ///< temperature of bath, plate or air
    bool closed = false;               ///< whether it happens in a closed vessel
    std::string why;                   ///< of a caution that no rule asks for
    bool whole = true;                 ///< false where a field of this item is unusable
  };

  int bought_after = 0;  ///< the cell that was in it was bought after this year; 0: nothing is said
  std::string purpose;
  std::optional<base::Quantity> time;
  std::vector<std::string> before;
  References tools;   ///< `tool/ID`
  References inside;  ///< `part/ID`, `material/ID`
  std::vector<Slot> slots;
  References cautions;      ///< `caution/ID`
  std::vector<Step> steps;  ///< places as in the file: `steps.0` is steps[0]
  std::vector<std::string> stop;
  std::string done;
  References next;  ///< `procedure/ID`
};

}  // namespace benchleaf::model
