#pragma once

#include <string>
#include <vector>

#include "model/fact.h"

namespace benchleaf::model {

/// What every typed row knows about where it comes from.
struct RowOrigin {
  std::string id;  ///< `table/cell-systems#S`: the fact of a cell is this, a dot, the column
  Trust trust = Trust::memory;
  std::string source;  ///< publication, and edition where one is known
};

/// What a substance is to others that it meets; a substance may be in several groups.
struct ReactiveGroup {
  std::string group;
  std::vector<std::string> members;  ///< ids of substances
  RowOrigin origin;
};

/// What members of two groups do to each other. `open` and `closed` say what is allowed: ok, rinse (not without a rinse
/// between) or never.
struct ReactivePair {
  std::string one;
  std::string other;
  std::string product;
  std::string effect;
  std::string open;
  std::string closed;
  std::string cite;  ///< `source/ID`, or empty
  RowOrigin origin;
};

/// The caution that a hazard of the bench asks for.
struct HazardCaution {
  std::string hazard;
  std::string caution;  ///< id
  std::string why;
  bool own = false;  ///< whether the step makes the hazard itself, so that its caution stands before it in full
  RowOrigin origin;
};

/// Words of a step that give a way of working or a hazard away, whatever its fields say.
struct StepWord {
  std::string verb;
  std::string object;  ///< at most four words after the verb, or empty
  std::string means;   ///< a way of working, or a hazard
  RowOrigin origin;
};

/// The first year from whose end cells of a system carry no mercury.
struct MercuryFree {
  std::string system;
  int year = 0;
  RowOrigin origin;
};

}  // namespace benchleaf::model
