#pragma once

namespace benchleaf::standards {

// Rings of rubber in their grooves. Lengths in one unit, results in per cent where they are shares.

/// How much a ring of this inside is stretched over a seat of this diameter.
double stretch_percent(double inside, double seat);
/// How much the outside of a ring is pressed together in a bore of this diameter.
double interference_percent(double outside, double bore);
/// Section of the stretched ring at constant volume while it stays round.
double stretched_section(double section, double inside, double seat);
/// The same for the torus as it is, by bisection: the cross-check of the simple form.
double stretched_section_of_torus(double section, double inside, double seat);
/// How much of a section is pressed together in a groove of this depth.
double squeeze_percent(double section, double depth);
/// How much of the groove a round section fills.
double fill_percent(double section, double depth, double width);

}  // namespace benchleaf::standards
