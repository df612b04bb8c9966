#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bench/ask.h"
#include "bench/items.h"

namespace benchleaf::bench {

/// What holds the gasket: a boss that it is drawn over, a bore that it lies in, the inner wall of a groove in a face.
enum class Measured { boss, bore, face };

/// A series of gaskets as its record states it, or a lone section.
struct Series {
  bool named = false;
  std::string record;
  bool flat = false;
  bool moving = false;
  std::optional<Amount> section;  ///< mm, round ones
  std::optional<Amount> height;   ///< mm, flat ones
  double from = 0, to = 0, step = 0;
  std::optional<Amount> inside_tolerance;
  model::Trust trust = model::Trust::given;
  std::vector<std::string> facts;
};

/// What makes a size right, with the published limits.
struct SizeRule {
  Measured of = Measured::boss;
  bool of_flat = false;
  double low = 0, high = 0, aim = 0;  ///< per cent; mm of play for flat ones
  double section = 0;
  Code measure = Code::stretch;  ///< stretch, interference, play: the name of the figure too
  std::string band_printed, aim_printed;
  std::string formula, source;
  model::Trust trust = model::Trust::memory;
  std::vector<std::string> facts;  ///< the rows of the limits

  /// Stretch or interference of a size on a seat, per cent; play of a flat one, mm.
  double share(double size, double seat) const;
  /// How a share stands to the band.
  Code verdict(double share) const;
};

struct OtherSize {
  double size = 0;
  double share = 0;
  Code verdict = Code::within_band;
  std::string why;
};

/// The size nearest to the aim within the band, and those around it up to the first that fails on either side.
struct SizeChoice {
  std::optional<double> best;
  std::vector<OtherSize> others;
  std::vector<OtherSize> nearest;  ///< where none sits: the next looser and the next tighter one
  std::string why_none;
};

Series read_series(Ask& ask);
SizeRule read_size_rule(Ask& ask, Measured of, const Series& series);
SizeChoice choose_size(const Series& series, const SizeRule& rule, double seat);
/// Half the width of the tolerance of a size, mm: that of the series, else the general one of the standard.
Amount size_tolerance(Ask& ask, const Series& series, double size);

}  // namespace benchleaf::bench
