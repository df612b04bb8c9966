#pragma once

#include <memory>

#include "model/drawing.h"
#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

/// How long each cell lasted, as bars on years, the one that is in it open at its end; nothing with fewer than two visits.
std::shared_ptr<const model::Drawing> cell_bars(const SheetContext& context);
/// Draw, rate and voltage of the old cell over the visits, each with the healthy band where one is on record; nothing where no
/// two visits have such a reading.
std::shared_ptr<const model::Drawing> reading_plots(const SheetContext& context);

}  // namespace benchleaf::ticket
