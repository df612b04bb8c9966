#pragma once

#include <memory>

#include "compose/desk.h"
#include "model/drawing.h"
#include "ticket/plan.h"

namespace benchleaf::ticket {

/// The drawing that helps with a procedure, by the roles of its job: the back with the tool in its place, the seat of the gasket,
/// the cell. Nothing where the book has none.
std::shared_ptr<const model::Drawing> figure_of_job(const compose::Desk& desk, const Bench& bench,
                                                    const model::RecordRef& procedure);

}  // namespace benchleaf::ticket
