#pragma once

#include "page/display.h"

namespace benchleaf::page {

/// What a print shop cuts by, in millimetres: common practice for sheet-fed printing, no source.
inline constexpr double kBleedMm = 3;
inline constexpr double kMarkedMarginMm = 10;  ///< around the trimmed page: bleed, then marks that stay clear of it

/// Puts every page on paper that is kMarkedMarginMm larger all round, with crop marks at the corners; fills that end at the
/// trim run on to the bleed. Everything else keeps its size and its place on the trimmed page.
void add_crop_marks(Document& document);

}  // namespace benchleaf::page
