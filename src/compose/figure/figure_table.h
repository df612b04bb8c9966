#pragma once

#include <optional>

#include "compose/desk.h"
#include "model/book.h"
#include "model/records/page.h"

namespace benchleaf::compose {

/// A picture drawn from facts, alone in a table whose caption says what it shows, with the sign of the weakest fact. Nothing
/// where the block asks for none or a fact is missing. A page asks for one with
///     show: nest                      # circles at true size to lay a gasket on
///     words: Lay it on dry
///     series: round-0-7
///     show: voltages                  # bars from end to nominal voltage of systems of cells
///     words: From new to spent
///     rows: [{ system: S, course: stays flat }]
/// or draws what a calculator answers in place of the table of answers:
///     show: reckoned                  # name, calculator, rows and columns as ever
///     drawn: depth-profile            # or gasket-groove
///     words: What each grade takes
std::optional<model::Table> figure_table(const Desk& desk, const model::Page& page, const model::DerivedRequest& request);

/// Whether a block of answers is drawn and not set as a table.
bool is_drawn(const model::DerivedRequest& request);

}  // namespace benchleaf::compose
