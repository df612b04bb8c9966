#pragma once

#include "ticket/context.h"
#include "ticket/plan.h"

namespace benchleaf::ticket {

/// What the jobs that are done need, with what does as well, and where it lies if it is there.
void add_needs(const Context& context, const Marks& marks, Plan& plan);

/// Whether a job that is done has a role.
bool does(const Context& context, const Plan& plan, std::string_view role);

}  // namespace benchleaf::ticket
