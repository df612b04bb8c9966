#pragma once

#include <vector>

#include "model/sheet.h"
#include "page/display.h"
#include "page/sheet/fit.h"
#include "page/sheet/sheet_paper.h"
#include "page/text/fonts.h"
#include "page/text/hyphenator.h"
#include "report/finding.h"

namespace benchleaf::page {

struct SheetDocument {
  Document document;
  std::vector<SheetFit> fits;  ///< one a side
};

/// Sets a chart on a paper, a page a side, at the largest type at which every panel fits; see fit_side() for what happens
/// where it does not.
SheetDocument set_sheets(const model::SheetSet& chart, const SheetPaper& paper, const FontSet& fonts,
                         const Hyphenator* hyphenator, report::Findings& findings);

/// The same as A5 cards, as many as lie side by side on the paper, with marks to cut them by.
SheetDocument set_cards(const model::SheetSet& card, const SheetPaper& paper, const FontSet& fonts, const Hyphenator* hyphenator,
                        report::Findings& findings);

}  // namespace benchleaf::page
