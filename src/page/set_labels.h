#pragma once

#include <string>
#include <vector>

#include "model/label_sheet.h"
#include "page/display.h"
#include "page/text/fonts.h"
#include "page/text/hyphenator.h"
#include "report/finding.h"

namespace benchleaf::page {

/// A label that has no room for its words at the least type.
struct LabelMisfit {
  std::string title;
  double missing_mm = 0;  ///< height that it lacks
};

struct LabelDocument {
  Document document;
  std::vector<LabelMisfit> misfits;
};

/// Sets each label within its edges at the largest type that fits, from the first free place on, as many sheets as it takes.
LabelDocument set_labels(const model::LabelSheets& sheets, const FontSet& fonts, const Hyphenator* hyphenator,
                         report::Findings& findings);

}  // namespace benchleaf::page
