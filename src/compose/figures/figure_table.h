#pragma once

#include <optional>
#include <string>
#include <vector>

#include "compose/desk.h"
#include "model/book.h"
#include "model/records/page.h"

namespace benchleaf::compose {

/// A picture drawn from facts, alone in a table or beside words, with a caption that says what it shows and the sign of the
/// weakest fact. Nothing where the block asks for none or a fact is missing. A page asks for one with
///     show: nest                      # circles at true size to lay a gasket on
///     words: Lay it on dry
///     series: round-0-7
///     show: voltages                  # bars from end to nominal voltage of systems of cells
///     words: From new to spent
///     rows: [{ system: S, course: stays flat }]
///     show: backs                     # where a tool goes in, by kind of back
///     words: Where a back is lifted
///     gasket: round-0-7
///     rows: [{ back: snap, procedure: open-a-snap-back, tool: case-knife, place: lip, deepest: blade-depth }]
///     show: crystal-fits              # how crystals sit in their seats
///     words: How a crystal is held
///     rows: [{ crystal: acrylic-press-fit }]
/// or draws what a calculator answers in place of the table of answers:
///     show: reckoned                  # name, calculator, rows and columns as ever
///     drawn: depth-profile            # or gasket-groove
///     words: What each grade takes
std::optional<model::Table> figure_table(const Desk& desk, const model::Page& page, const model::DerivedRequest& request);

/// Whether a block of answers is drawn and not set as a table.
bool is_drawn(const model::DerivedRequest& request);
/// What `drawn` takes.
std::vector<std::string> figure_names();

}  // namespace benchleaf::compose
