// In: a gasket of a chosen size, depth and width of its groove. Out: what is left of its section, squeeze, fill, verdicts.

#include "bench/gasket_groove.h"

#include <string>

#include "base/quantity.h"
#include "standards/ring.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr Plausible kDepth{0.02, 10};  // mm
constexpr Plausible kWidth{0.05, 20};  // mm

/// What follows where a figure lies below or above its band.
struct Consequences {
  std::string little, much;
};

/// How a figure stands to its band, with the ends of its interval in mind.
Code stand_of(const Amount& found, const Amount& band) {
  if (found.nominal < band.low) return Code::below_band;
  if (found.nominal > band.high) return Code::above_band;
  const bool perhaps_below = found.low < band.low;
  const bool perhaps_above = found.high > band.high;
  if (perhaps_below && perhaps_above) return Code::perhaps_outside;
  return perhaps_below ? Code::perhaps_below : perhaps_above ? Code::perhaps_above : Code::within_band;
}

std::string stand_words(Code stand, const Amount& band, const Consequences& consequences) {
  const std::string little = "too little: " + consequences.little;
  const std::string much = "too much: " + consequences.much;
  const std::string perhaps = "within " + band.printed + "; by its tolerances perhaps ";
  switch (stand) {
    case Code::below_band: return little + ", sought " + band.printed;
    case Code::above_band: return much + ", sought " + band.printed;
    case Code::perhaps_below: return perhaps + little;
    case Code::perhaps_above: return perhaps + much;
    case Code::perhaps_outside: return perhaps + little + ", or " + much;
    default: return "within " + band.printed;
  }
}

void put_stand(Answer& answer, const char* name, const Amount& found, const Amount& band, const Consequences& consequences) {
  const Code stand = stand_of(found, band);
  answer.decide(name, stand, stand_words(stand, band, consequences), detail::resting_on({found, band}));
}

Amount with_tolerance(const Amount& section, const Amount& half_width) {
  Amount wide = detail::resting_on({section, half_width});
  wide.nominal = section.nominal;
  wide.low = section.low - half_width.nominal;
  wide.high = section.high + half_width.nominal;
  wide.has_ends = true;
  return wide;
}

/// The section with the tolerance of its series, else the standard's where it reaches that far; below it has none.
Amount toleranced_section(Ask& ask, Answer& answer, const Series& series) {
  const Amount& section = *series.section;
  if (section.has_ends) return section;
  if (series.named) {
    if (auto stated = ask.stated(series.record, "section-tolerance", Unit::millimetre)) return with_tolerance(section, *stated);
  }
  const Amount from = ask.row("ring-tolerances", "section", "from", Unit::millimetre);
  const Amount below = ask.row("ring-tolerances", "section", "below", Unit::millimetre);
  if (section.nominal >= from.nominal && section.nominal <= below.nominal)
    return with_tolerance(section, ask.row("ring-tolerances", "section", "constant", Unit::millimetre));
  answer.holds("No published tolerance reaches a section of " + shown(section, Unit::millimetre) +
               ": squeeze and fill are nominal in it.");
  return section;
}

const char* squeeze_limit(Ask& ask, const Series& series, bool moving) {
  if (!moving) return "static-squeeze";
  const Amount small = ask.row("ring-tolerances", "small-section", "constant", Unit::millimetre);
  return series.section->nominal < small.nominal ? "moving-squeeze-small" : "moving-squeeze";
}

void put_squeeze(Ask& ask, Answer& answer, const InGroove& gasket, const Amount& section, const Amount& depth) {
  const Amount band = ask.row("gland-limits", squeeze_limit(ask, gasket.series, gasket.moving), "band", Unit::percent);
  const Amount usual = ask.row("gland-limits", "moving-squeeze", "band", Unit::percent);
  const Amount least = ask.row("ring-tolerances", "least-squeeze", "constant", Unit::millimetre);
  if (ask.failed()) return;
  const Amount squeeze = over<2>({section, depth}, [](const auto& p) { return standards::squeeze_percent(p[0], p[1]); });
  answer.formula("squeeze = 100 (section - depth) / section", "seal maker's design guide; limits of the table gland-limits",
                 band.trust);
  answer.put("squeeze", squeeze, Unit::percent);
  const Consequences still = {"it may not seal", "it is crushed"};
  const Consequences moving = {"it does not seal", "it sticks and wears"};
  put_stand(answer, "squeeze-verdict", squeeze, band, gasket.moving ? moving : still);
  if (gasket.moving && squeeze.high > usual.high) {
    answer.caution("", "A moving seal takes at most " + shown(usual.high, 0, Unit::percent) +
                           " as a rule, small sections up to " + shown(band.high, 0, Unit::percent) +
                           ": grease it and try whether it moves freely.");
  }
  if (!gasket.moving && section.nominal - depth.nominal < least.nominal) {
    answer.caution("", "The squeeze is less than " + shown(least, Unit::millimetre) +
                           ", which general practice asks for whatever the size: the groove must be smooth and clean.");
  }
}

}  // namespace

void put_groove(Ask& ask, Answer& answer, const InGroove& gasket) {
  const Amount depth = ask.amount("groove-depth", Unit::millimetre, kDepth);
  const Amount section = toleranced_section(ask, answer, gasket.series);
  if (ask.failed()) return;
  Amount worn = section;
  if (gasket.of != Measured::bore) {
    worn = over<3>({section, gasket.inside, gasket.seat},
                   [](const auto& p) { return standards::stretched_section(p[0], p[1], p[2]); });
    answer.formula("section after stretch = section x sqrt(inside / seat)",
                   "constant volume, as a seal maker's design guide assumes", model::Trust::handbook);
    answer.put("section-stretched", worn, Unit::millimetre);
    const double torus = standards::stretched_section_of_torus(gasket.series.section->nominal, gasket.size, gasket.seat.nominal);
    answer.step("cross-check by the torus: " + shown(torus, 4, Unit::millimetre));
  }
  put_squeeze(ask, answer, gasket, worn, depth);
  if (ask.failed() || !ask.has("groove-width")) return;
  const Amount width = ask.amount("groove-width", Unit::millimetre, kWidth);
  const Amount band = ask.row("gland-limits", "gland-fill", "band", Unit::percent);
  if (ask.failed()) return;
  const Amount fill = over<3>({worn, depth, width}, [](const auto& p) { return standards::fill_percent(p[0], p[1], p[2]); });
  answer.formula("fill = 100 (pi section² / 4) / (depth x width)", "seal maker's design guide; limits of the table gland-limits",
                 band.trust);
  answer.put("fill", fill, Unit::percent);
  put_stand(answer, "fill-verdict", fill, band, {"it can roll", "it has no room to swell"});
}

void put_depths(Ask& ask, Answer& answer, const Series& series, bool moving) {
  const Amount band = ask.row("gland-limits", squeeze_limit(ask, series, moving), "band", Unit::percent);
  if (ask.failed()) return;
  const auto depth_at = [&](double squeeze) {
    Amount depth = *series.section * exactly(1 - squeeze / 100);
    depth.trust = model::weaker(depth.trust, band.trust);
    depth.facts.insert(depth.facts.end(), band.facts.begin(), band.facts.end());
    return depth;
  };
  answer.formula("depth = section (1 - squeeze / 100)", "seal maker's design guide; limits of the table gland-limits",
                 band.trust);
  answer.put("least-depth", depth_at(band.high), Unit::millimetre);
  answer.put("most-depth", depth_at(band.low), Unit::millimetre);
  answer.holds("Depths are those at which a section of " + shown(*series.section, Unit::millimetre) + " is squeezed by " +
               band.printed + ".");
}

void flat_groove(Ask& ask, Answer& answer, const Series& series) {
  answer.holds("A flat gasket is replaced by a flat one of the same height and width.");
  if (!ask.has("groove-depth") || !series.height) return;
  const Amount depth = ask.amount("groove-depth", Unit::millimetre, kDepth);
  const Amount squeeze = over<2>({*series.height, depth}, [](const auto& p) { return standards::squeeze_percent(p[0], p[1]); });
  answer.formula("squeeze = 100 (height - depth) / height", "as for round gaskets", model::Trust::memory);
  answer.put("squeeze", squeeze, Unit::percent);
}

}  // namespace benchleaf::bench
