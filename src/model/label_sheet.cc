// In: a grid of labels. Out: the room that a printer leaves on each.
#include "model/label_sheet.h"

#include <algorithm>

#include "model/paper_size.h"

namespace benchleaf::model {

namespace {

constexpr double kInsideMm = 2;       // feeds of common printers are true to 1 to 2 mm; common practice, no source
constexpr double kPaperEdgeMm = 4.3;  // what common printers leave white; common practice, no source

}  // namespace

LabelInset inset_of(const LabelGrid& grid) {
  const PaperSize* paper = paper_size(grid.paper);
  if (paper == nullptr) return {kInsideMm, kInsideMm};
  const Mm last = grid.corner(grid.count() - 1);
  const double side = std::min(grid.left_mm, paper->width_mm - last.x - grid.width_mm);
  const double end = std::min(grid.top_mm, paper->height_mm - last.y - grid.height_mm);
  return {std::max(kInsideMm, kPaperEdgeMm - side), std::max(kInsideMm, kPaperEdgeMm - end)};
}

LabelRoom room_of(const LabelGrid& grid) {
  const LabelInset inset = inset_of(grid);
  return {grid.width_mm - 2 * inset.side_mm, grid.height_mm - 2 * inset.end_mm};
}

}  // namespace benchleaf::model
