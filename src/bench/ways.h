#pragma once

#include <set>
#include <string>
#include <string_view>

#include "bench/step_world.h"

namespace benchleaf::bench {

/// The ways in which a step is done (`wipe`, `bath`, `tank`, `brush`, ...) and its hazards (`cell-handled`): what it
/// states, what its tools bring, and what its words give away. A liquid that nothing is said of is wiped on.
std::set<std::string, std::less<>> ways_of(const StepWorld& world, const model::Procedure::Step& step);

/// Whether the liquid goes everywhere in this way, so that whatever is inside is reached.
bool floods(const std::set<std::string, std::less<>>& ways);

}  // namespace benchleaf::bench
