#pragma once

#include "bench/answer.h"
#include "bench/ask.h"
#include "bench/gasket_sizes.h"

namespace benchleaf::bench {

/// A gasket of a chosen size in its place.
struct InGroove {
  const Series& series;
  Measured of = Measured::boss;
  Amount inside;  ///< mm, with its tolerance
  Amount seat;    ///< mm
  double size = 0;
  bool moving = false;
};

/// Section after stretch, squeeze and fill of a round gasket, held against the published limits.
void put_groove(Ask& ask, Answer& answer, const InGroove& gasket);
/// Depths of groove, mm, between which the section as made is squeezed within the published limits.
void put_depths(Ask& ask, Answer& answer, const Series& series, bool moving);
/// Squeeze of a flat gasket, which has no section that stretches.
void flat_groove(Ask& ask, Answer& answer, const Series& series);

}  // namespace benchleaf::bench
