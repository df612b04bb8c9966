#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "compose/desk.h"
#include "derive/page_answers.h"
#include "model/records/page.h"

namespace benchleaf::compose {

/// A picture and how far the facts in it can be trusted.
struct Figure {
  std::shared_ptr<const model::Drawing> drawing;
  Sign sign;
};

/// The answers that a page asks for, by row.
struct Asked {
  const Desk& desk;
  const model::Page& page;
  const derive::PageAnswers& answers;

  /// The answer of a row, or nullptr where it was refused or not asked for.
  const model::Fact* fact(std::size_t row, const std::string& output) const;
  /// What a row gives for an input, as the page has it; empty where it gives none.
  std::string given(std::size_t row, const std::string& input) const;
};

/// What a scratch and each paper of a ladder take from a crystal, one below the other, to scale in depth: 0.2 mm on paper a
/// micrometre. The first row asks the whole ladder for `removal`, each further one a single grade of it, coarsest first, for
/// `ladder-removal`. Depths in micrometres; nothing where an answer is missing.
std::optional<Figure> depth_profile(const Asked& asked);

/// A round gasket in section 20 times its size: at rest, stretched over its boss, squeezed in its closed groove. The one row
/// gives seat, series, groove-depth and groove-width and asks for section-stretched, stretch, squeeze and fill. The squeezed
/// outline is as large as the stretched round, since rubber moves and does not shrink; its rounded ends are drawn, not
/// reckoned. Millimetres; nothing where an answer is missing.
std::optional<Figure> gasket_groove(const Asked& asked);

/// A bar from end to nominal voltage for each row `{ system: S, course: stays flat }`, by the letters of the table
/// cell-systems, on one scale of volts from 0. It says nothing of what lies between, but by the words of `course`. Nothing
/// where a row names no system or the table states no end.
std::optional<Figure> voltage_bands(const Desk& desk, const model::Node& rows);

/// For each row `{ back: snap, procedure: P, tool: T, place: TERM, deepest: RULE }` the back from above and in section with its
/// tool in the accent, and beside it what procedure and tool say. `gasket` of the block names the series that is drawn;
/// `deepest` a row of bench-rules. A watch that opens from the front is `{ back: none, words: W, then: W }`. Nothing where the
/// procedure does not name the tool, the place and the depth that the row names.
std::optional<model::Table> back_places(const Desk& desk, const model::Node& body);

/// For each row `{ crystal: C }` the edge of the crystal in its seat, in section, with half of its oversize dashed, and beside
/// it how it is recognised and what else is held in the same way. A crystal on a gasket needs `ring: SERIES` and
/// `oversize: RULE`, a row of bench-rules, since its oversize is over the ring and not over the seat. Nothing where a figure is
/// missing or the record of the crystal does not name the oversize of its ring.
std::optional<model::Table> crystal_fits(const Desk& desk, const model::Node& body);

/// Circles for each whole millimetre of inside that a series is sold in, at true size, shared out among as many nests as
/// keep a figure readable between two circles; the smallest circle of each is a millimetre wider than that of the last.
std::vector<std::shared_ptr<const model::Drawing>> nests_of(const model::Gasket& series);

}  // namespace benchleaf::compose
