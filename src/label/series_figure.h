#pragma once

#include <memory>
#include <optional>

#include "base/quantity.h"
#include "model/label_sheet.h"
#include "model/records/gasket.h"

namespace benchleaf::label {

/// A gasket in section, 6 times its size; nothing where the record does not state its measures.
std::shared_ptr<const model::Drawing> gasket_section(const model::Gasket& series);

/// Puts what a thing of a series is laid on onto its label: a circle of its size where there is room for one, else a line as
/// long; the section, where there is one, within the circle or at the right.
void add_figures(const std::shared_ptr<const model::Drawing>& section, const std::optional<base::Quantity>& size,
                 const model::LabelRoom& room, model::Label& label);

}  // namespace benchleaf::label
