#pragma once

#include "ticket/context.h"
#include "ticket/plan.h"

namespace benchleaf::ticket {

/// The jobs of a watch in the order of the bench: those that it names, else the usual ones, and what the causes of its symptoms
/// ask for; each judged. Adds to the marks what the jobs tell.
void add_jobs(const Context& context, Marks& marks, Plan& plan);

/// The record that plans a procedure, or nullptr.
const model::Job* job_of(const model::KnowledgeBase& records, const RecordRef& procedure);
/// The stages in the order of the bench.
const std::vector<std::string_view>& stages();

}  // namespace benchleaf::ticket
