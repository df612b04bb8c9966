#pragma once

#include "ticket/context.h"
#include "ticket/plan.h"

namespace benchleaf::ticket {

/// A cell to fit, with what does as well, the best first.
struct ChosenCell {
  RecordRef cell;
  int count = 1;
  std::vector<Alternative> instead;
};

/// The cells to fit: by those that were found, else by the size that was measured, else by the one that the module takes. Empty
/// where neither says which. A silver cell that was found stands first unless lamp, alarm or voltage says otherwise.
std::vector<ChosenCell> choose_cells(const Context& context);

}  // namespace benchleaf::ticket
