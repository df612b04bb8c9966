#pragma once

#include "model/records/handbook.h"
#include "model/sheet.h"

namespace benchleaf::ticket {

/// The card that is filled in with a pencil when a watch comes in: one side on A4 or US Letter, a picture beside each
/// measurement, the fields in the order and by the names of a watch record.
model::SheetSet intake_card(const model::Handbook& handbook);

}  // namespace benchleaf::ticket
