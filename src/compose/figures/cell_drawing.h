#pragma once

#include <memory>

#include "compose/desk.h"
#include "model/drawing.h"

namespace benchleaf::compose {

/// A cell at true size, plan above section, with its dimensions; nothing where a measure is not on file. The section is a
/// drawn type, no measured part: only diameter and height are facts.
std::shared_ptr<const model::Drawing> cell_drawing(const Desk& desk, const model::Cell& cell);
/// Plan and section side by side at true size, without dimensions; nothing where a measure is not on file.
std::shared_ptr<const model::Drawing> cell_views(const Desk& desk, const model::Cell& cell);
/// The plan alone, a circle, at true size, with paper round it.
std::shared_ptr<const model::Drawing> cell_outline(const model::Fact& diameter, double margin_mm = 1);

/// The section alone at true size, can and plus side up.
std::shared_ptr<const model::Drawing> cell_section(const Desk& desk, const model::Cell& cell);

}  // namespace benchleaf::compose
