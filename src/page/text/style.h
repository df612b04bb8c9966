#pragma once

#include "page/display.h"
#include "page/text/fonts.h"

namespace benchleaf::page {

/// How a stretch of text looks. Lengths are 1/1000 pt.
struct TextStyle {
  Face face = Face::text;
  Length size = 9500;
  Length leading = 13000;  ///< from baseline to baseline
  Color color;
  bool tabular = true;  ///< digits of one width; false: digits as wide as they are drawn
  Length tracking = 0;  ///< added after every glyph
  Length rise = 0;      ///< upwards; it moves no baseline and no line
};

/// Font units to 1/1000 pt at a size, to the nearest, halves upwards.
Length from_units(std::int64_t units, Length size, int units_per_em);
/// Height above the baseline, 1/1000 pt, of a capital letter; for setting text flush with a rule or a figure.
Length cap_height(const FontSet& fonts, const TextStyle& style);
/// From the top of a line `leading` high to its baseline: the room above and below the face is the same.
Length baseline_in_line(const FontSet& fonts, const TextStyle& style);

}  // namespace benchleaf::page
