// Out: the papers of bench charts. Their edge is wider than the 6 mm that laminating takes.
#include "page/sheet/sheet_paper.h"

#include <utility>

namespace benchleaf::page {
namespace {

struct PaperMm {
  const char* name;
  double width, height, title_band;
};
constexpr double kEdgeMm = 7;
constexpr double kGapMm = 6;
constexpr double kFootBandMm = 15;
constexpr PaperMm kPapers[] = {
    {"a4", 210, 297, 11}, {"letter", 215.9, 279.4, 11}, {"a3", 297, 420, 14}, {"tabloid", 279.4, 431.8, 14}};

}  // namespace

std::optional<SheetPaper> sheet_paper(std::string_view name, bool landscape) {
  for (const PaperMm& mm : kPapers) {
    if (name != mm.name) continue;
    SheetPaper paper;
    paper.name = std::string(name) + (landscape ? " landscape" : " portrait");
    paper.width = from_mm(mm.width);
    paper.height = from_mm(mm.height);
    if (landscape) std::swap(paper.width, paper.height);
    paper.edge = from_mm(kEdgeMm);
    paper.title_band = from_mm(mm.title_band);
    paper.foot_band = from_mm(kFootBandMm);
    paper.gap = from_mm(kGapMm);
    return paper;
  }
  return std::nullopt;
}

}  // namespace benchleaf::page
