#pragma once

#include <string>
#include <vector>

#include "model/marks.h"
#include "model/record.h"

namespace benchleaf::model {

/// When a procedure is planned, where it stands in the order of the bench, and what it is planned for.
struct Job : Record {
  /// A caution or a step of the short form.
  struct Brief {
    RecordRef caution;  ///< `caution/ID`
    std::string text;
  };
  RecordRef procedure;               ///< `procedure/ID`
  std::string stage;                 ///< look, strap, identify, open, inspect, clear, contact, measure, ...
  std::vector<std::string> roles;    ///< fits-cell, uses-cell, opens-back, closes-back, polishes-crystal, ...
  std::vector<std::string> answers;  ///< wishes: new-cell, run, clear-crystal, ...
  bool on_request = false;           ///< planned where a watch names it, and else by nothing
  std::string reason;                ///< one line: why it is done
  std::vector<Condition> usual;      ///< any of these: planned without being asked for
  std::vector<Condition> only;       ///< none of these: not for this watch, whoever asks; empty: for any
  std::string otherwise;             ///< why it is not for this watch
  std::string figure;                ///< that stands beside its steps: back, seat, groove, crystal, scratch, lugs, cell; or empty
  RecordRef figure_tool;             ///< `tool/ID` in the figure of a back
  RecordRef figure_place;            ///< `term/ID`: where it goes in
  References after;                  ///< `procedure/ID`: those that come before it where they are planned
  std::vector<Brief> brief;          ///< for a ticket of one page
};

}  // namespace benchleaf::model
