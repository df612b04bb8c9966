// Out: the papers of bench charts. Their edge is wider than the 6 mm that laminating takes.
#include "page/sheet/sheet_paper.h"

#include <utility>

#include "model/paper_size.h"

namespace benchleaf::page {
namespace {

constexpr double kEdgeMm = 8;
constexpr double kGapMm = 6;
constexpr double kFootBandMm = 15;
constexpr double kTitleBandMm = 14;
constexpr double kSmallTitleBandMm = 11.2;
constexpr double kCardFootBandMm = 11;
constexpr double kCardFloorPt = 9.5;  // read in the hand
constexpr double kCardWidthMm = 148;  // A5, ISO 216
constexpr double kCardHeightMm = 210;

}  // namespace

std::optional<SheetPaper> sheet_paper(std::string_view name, bool landscape) {
  const model::PaperSize* size = model::paper_size(name);
  if (size == nullptr) return std::nullopt;
  SheetPaper paper;
  paper.name = std::string(name) + (landscape ? " landscape" : " portrait");
  paper.width = from_mm(size->width_mm);
  paper.height = from_mm(size->height_mm);
  if (landscape) std::swap(paper.width, paper.height);
  paper.edge = from_mm(kEdgeMm);
  paper.title_band = from_mm(size->small ? kSmallTitleBandMm : kTitleBandMm);
  paper.foot_band = from_mm(kFootBandMm);
  paper.gap = from_mm(kGapMm);
  return paper;
}

SheetPaper card_paper() {
  SheetPaper paper;
  paper.name = "a5 portrait";
  paper.width = from_mm(kCardWidthMm);
  paper.height = from_mm(kCardHeightMm);
  paper.edge = from_mm(kEdgeMm);
  paper.title_band = from_mm(kSmallTitleBandMm);
  paper.foot_band = from_mm(kCardFootBandMm);
  paper.gap = from_mm(kGapMm);
  paper.floor_pt = kCardFloorPt;
  return paper;
}

}  // namespace benchleaf::page
