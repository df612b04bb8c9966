#pragma once

#include "model/leaflet.h"
#include "page/display.h"
#include "page/paper.h"
#include "page/text/fonts.h"
#include "page/text/hyphenator.h"
#include "report/finding.h"

namespace benchleaf::page {

/// Sets a leaflet on one paper: title, blocks in two columns, a foot on each page with its number and the signs that stand on
/// it. The fonts must be complete(). A word too wide for its place and a glyph no font has are findings.
Document set_leaflet(const model::Leaflet& leaflet, const Paper& paper, const FontSet& fonts, const Hyphenator* hyphenator,
                     report::Findings& findings);

}  // namespace benchleaf::page
