#pragma once

#include "ticket/context.h"
#include "ticket/plan.h"

namespace benchleaf::ticket {

/// Asks a calculator about this watch; its outputs become facts `watch/ID#NAME.OUTPUT`, where NAME is that of the calculator
/// unless another is given.
bench::Result reckon(const Context& context, std::string_view calculator, const Words& words, Plan& plan,
                     const std::string& name = {});

/// Sizes of the back gasket for the seat, or for the old gasket; a finding where there is none, or the drawer has none.
void reckon_gasket(const Context& context, Plan& plan);
/// The ladder of grades for the scratch. Out: what it says of a polish; nothing where none is thought of.
std::optional<Mark> reckon_ladder(const Context& context, Plan& plan);
/// Liquid for each residue that a job which is done lifts with it.
void reckon_doses(const Context& context, Plan& plan);
/// How long the cell lasts that was chosen.
void reckon_life(const Context& context, const RecordRef& cell, Plan& plan);

}  // namespace benchleaf::ticket
