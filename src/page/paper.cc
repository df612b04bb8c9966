// Out: the two papers of the handbook. The block is equally wide on both, so that lines break alike.
#include "page/paper.h"

#include "model/paper_size.h"

namespace benchleaf::page {
namespace {

constexpr int kGridColumns = 6;
constexpr double kGutterMm = 5.0;

struct PageMm {
  const char* paper;
  double inner, block_top, block_height;
};
constexpr double kBlockWidthMm = 174;
constexpr PageMm kPages[] = {
    {"a4", 20, 20, 262},
    {"letter", 22, 18.6, 245.9},
};

Paper from_measures(const PageMm& mm) {
  const model::PaperSize& size = *model::paper_size(mm.paper);
  Paper paper;
  paper.name = size.name;
  paper.width = from_mm(size.width_mm);
  paper.height = from_mm(size.height_mm);
  paper.inner = from_mm(mm.inner);
  paper.block_width = from_mm(kBlockWidthMm);
  paper.block_top = from_mm(mm.block_top);
  paper.block_height = from_mm(mm.block_height);
  paper.head_rule = from_mm(15.5);
  paper.folio = from_mm(9);
  return paper;
}

}  // namespace

std::optional<Paper> paper_named(std::string_view name) {
  for (const PageMm& mm : kPages) {
    if (name == mm.paper) return from_measures(mm);
  }
  return std::nullopt;
}

Length grid_width(const Paper& paper, int columns) {
  const Length gutter = from_mm(kGutterMm);
  const Length column = (paper.block_width - (kGridColumns - 1) * gutter) / kGridColumns;
  return columns * column + (columns - 1) * gutter;
}

Length grid_left(const Paper& paper, int column) { return column == 0 ? 0 : grid_width(paper, column) + from_mm(kGutterMm); }

}  // namespace benchleaf::page
