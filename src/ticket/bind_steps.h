#pragma once

#include "ticket/context.h"
#include "ticket/plan.h"

namespace benchleaf::ticket {

/// A procedure with the slots filled that the watch fills, else by the first record that is allowed, this watch's case and
/// crystal in its steps, and a step a rung where it sands.
model::Procedure bind_steps(const Context& context, const model::Procedure& procedure,
                            const std::vector<model::Watch::Filling>& fill, const std::vector<std::string>& rungs);
/// Puts every caution that a step needs directly before it, and takes out those that guard nothing of this watch.
void put_cautions(const Context& context, model::Procedure& procedure);
/// What lies in the watch is met when its back is lifted, not when its own job begins.
void warn_of_leaks(const Context& context, const Marks& marks, model::Procedure& procedure);

}  // namespace benchleaf::ticket
