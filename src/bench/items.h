#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bench/codes.h"
#include "model/fact.h"

namespace benchleaf::bench {

/// A figure of an item, rounded once for `printed`; the amounts are not rounded.
struct Figure {
  std::optional<double> value, low, high;  ///< in `unit`
  std::string unit;
  std::string printed;  ///< as set on paper
  model::Trust trust = model::Trust::memory;
};

/// A cell that goes into a place, or must not.
struct CellItem {
  std::string record;          ///< `cell/ID`
  std::string name;            ///< designation and trade number
  Code verdict = Code::never;  ///< use, with_care, bench_test_only, never, voltage_not_known
  Code size = Code::fits;      ///< same_size, fits, needs_spacer
  Code system = Code::none;    ///< same_system, other_system
  Code drain = Code::none;     ///< low or high where its drain is the wrong one for the place
  Figure voltage;              ///< nominal, V; no value where its system has none on file
  Figure lower;                ///< mm below the place; no value where it needs no spacer
  model::Trust trust = model::Trust::memory;
};

/// A step of a ladder of grades, coarsest first.
struct Rung {
  std::string scale;  ///< `P`, `JIS`
  std::string grade;  ///< `P800`
  Figure grain;       ///< median, micrometres
  Figure removal;     ///< what comes off at this step, micrometres
};

/// A size of a series, the chosen one first, then its neighbours.
struct SizeItem {
  std::string record;                ///< `gasket/ID`, or what else the sizes are of
  Figure size;                       ///< mm
  Code measure = Code::stretch;      ///< stretch, interference, play
  Figure share;                      ///< per cent, or mm of play
  Code verdict = Code::within_band;  ///< best, within_band, below_band, above_band
  bool nearest = false;              ///< none sits, and this one comes nearest from its side
};

/// A class of a mixture.
struct HazardItem {
  std::string hazard_class;      ///< `Skin Corr. 1B`
  std::string statement;         ///< `H314`
  Code verdict = Code::certain;  ///< certain, perhaps
};

/// What is not known, and of what.
struct NotKnown {
  std::string what;     ///< a closed word of the calculator: `voltage`, `classes`, `section`, `acid-or-alkali-reserve`
  std::string subject;  ///< a record, or empty
};

}  // namespace benchleaf::bench
