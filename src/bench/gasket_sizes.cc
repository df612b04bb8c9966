// In: a series of gaskets, what was measured, the published limits. Out: the size that sits and why the others do not.

#include "bench/gasket_sizes.h"

#include <algorithm>
#include <cmath>

#include "base/number.h"
#include "base/quantity.h"
#include "bench/answer.h"
#include "standards/ring.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr Plausible kSection{0.1, 10};  // mm
constexpr int kMostSizes = 2000;

void rest_on(Series& series, const Amount& amount) {
  series.trust = model::weaker(series.trust, amount.trust);
  series.facts.insert(series.facts.end(), amount.facts.begin(), amount.facts.end());
}

double needed_length(Ask& ask, Series& series, const std::string& path) {
  const Amount amount = ask.needed("series", series.record, path, Unit::millimetre);
  rest_on(series, amount);
  return amount.nominal;
}

std::string why_not(const SizeRule& rule, double share, double size, double best) {
  if (rule.of_flat) return share < rule.low ? "larger than the seat: it slides" : "too small: it stands up when it is drawn on";
  const bool bore = rule.of == Measured::bore;
  if (share < 0) return bore ? "it does not reach the wall" : "it does not touch the seat: it flops";
  if (share < rule.low) return bore ? "too loose" : "too loose: it flops and is pinched";
  if (share > rule.high) return bore ? "too tight: it buckles" : "too tight: it thins, ages and climbs out";
  return std::abs(size - best) > 0 ? "within the band, further from the best" : "";
}

/// Whether a measured section can be one of the series, by its tolerance or the standard's.
bool may_be_of(Ask& ask, const Series& series, const Amount& own) {
  const auto stated = ask.stated(series.record, "section-tolerance", Unit::millimetre);
  const Amount tolerance = stated.value_or(ask.row("ring-tolerances", "section", "constant", Unit::millimetre));
  return std::abs(own.nominal - series.section->nominal) <= tolerance.nominal + 1e-9;
}

/// No size sits: the nearest on either side of the band, with their shares. A seat beyond the ends of the series by more than
/// a step has none.
void add_nearest(const Series& series, const SizeRule& rule, const std::vector<OtherSize>& sizes, double seat,
                 SizeChoice& choice) {
  const OtherSize* looser = nullptr;
  const OtherSize* tighter = nullptr;
  for (const auto& one : sizes) {
    const bool below = one.verdict == Code::below_band;
    const OtherSize*& side = below ? looser : tighter;
    const double off = below ? rule.low - one.share : one.share - rule.high;
    const double best = side == nullptr ? off + 1 : below ? rule.low - side->share : side->share - rule.high;
    if (off < best) side = &one;
  }
  const double reach = rule.of == Measured::bore ? 2 * rule.section : 0;
  const bool beyond =
      seat < series.from + reach - series.step || seat > series.to + reach + series.step * 2 + rule.high * series.to / 100;
  if (beyond) return;
  for (const OtherSize* side : {looser, tighter}) {
    if (side == nullptr) continue;
    OtherSize one = *side;
    one.why = why_not(rule, one.share, one.size, one.size);
    choice.nearest.push_back(std::move(one));
  }
}

}  // namespace

double SizeRule::share(double size, double seat) const {
  if (of_flat) return seat - size;
  if (of == Measured::bore) return standards::interference_percent(size + 2 * section, seat);
  return standards::stretch_percent(size, seat);
}

Code SizeRule::verdict(double share) const {
  if (share < low) return Code::below_band;
  return share > high ? Code::above_band : Code::within_band;
}

Series read_series(Ask& ask) {
  Series series;
  if (ask.has("section")) series.section = ask.amount("section", Unit::millimetre, kSection);
  if (!ask.has("series")) return series;
  series.named = true;
  series.record = ask.record("series", {"gasket"});
  if (ask.failed()) return series;
  const std::string profile = ask.word(series.record, "profile");
  if (profile == "l") {
    ask.fail("series", ask.title(series.record) + " holds a crystal: it is chosen by the crystal, not by a seat");
    return series;
  }
  series.flat = profile == "flat";
  series.moving = ask.word(series.record, "moving") == "yes";
  const auto own = ask.stated(series.record, "section", Unit::millimetre);
  if (own && series.section && !may_be_of(ask, series, *own)) {
    ask.fail("section", "is " + base::to_terminal(shown(*series.section, Unit::millimetre)) + ", and " +
                            ask.title(series.record) + " has " + base::to_terminal(shown(*own, Unit::millimetre)));
  }
  // A section that was measured stands before that of the series, which scatters by its tolerance.
  if (own && !series.section) series.section = own;
  if (own) rest_on(series, *own);
  if (series.flat) series.height = ask.stated(series.record, "height", Unit::millimetre);
  series.from = needed_length(ask, series, "inside.from");
  series.to = needed_length(ask, series, "inside.to");
  series.step = needed_length(ask, series, "inside.step");
  series.inside_tolerance = ask.stated(series.record, "inside-tolerance", Unit::millimetre);
  const bool sensible = series.step > 0 && series.to >= series.from && (series.to - series.from) / series.step < kMostSizes;
  if (!sensible) ask.fail("series", series.record + " states no usable sizes");
  return series;
}

SizeRule read_size_rule(Ask& ask, Measured of, const Series& series) {
  SizeRule rule;
  rule.of = of;
  rule.of_flat = series.flat;
  if (series.section) rule.section = series.section->nominal;
  if (series.flat) {
    const Amount play = ask.row("ring-tolerances", "flat-fit", "constant", Unit::millimetre);
    rule.high = play.nominal;
    rule.aim = play.nominal / 2;
    rule.trust = play.trust;
    rule.facts = play.facts;
    rule.measure = Code::play;
    rule.formula = "play = seat - inside";
    rule.source = "usage of the bench for flat gaskets, 0 to 0.1 mm";
    return rule;
  }
  const char* const key = of == Measured::bore ? "bore-interference" : of == Measured::face ? "face-stretch" : "boss-stretch";
  const Amount band = ask.row("gland-limits", key, "band", Unit::percent);
  const Amount aim = ask.row("gland-limits", key, "aim", Unit::percent);
  rule.low = band.low;
  rule.high = band.high;
  rule.aim = aim.nominal;
  rule.band_printed = band.printed;
  rule.aim_printed = aim.printed;
  rule.trust = model::weaker(band.trust, aim.trust);
  rule.facts = detail::resting_on({band, aim}).facts;
  rule.measure = of == Measured::bore ? Code::interference : Code::stretch;
  rule.formula = of == Measured::bore ? "interference = 100 (outside - bore) / outside, outside = inside + 2 section"
                                      : "stretch = 100 (seat - inside) / inside";
  const model::PublishedTable* limits = ask.table("gland-limits");
  if (limits != nullptr) rule.source = "seal maker's design guide; limits of the table gland-limits";
  return rule;
}

SizeChoice choose_size(const Series& series, const SizeRule& rule, double seat) {
  SizeChoice choice;
  std::vector<OtherSize> sizes;
  const int last = static_cast<int>(std::floor((series.to - series.from) / series.step + 1e-6));
  for (int i = 0; i <= last; ++i) {
    const double size = base::tidy(series.from + i * series.step);
    const double share = rule.share(size, seat);
    sizes.push_back({size, share, rule.verdict(share), {}});
  }
  const OtherSize* best = nullptr;
  for (const auto& one : sizes) {
    if (one.verdict == Code::within_band &&
        (best == nullptr || std::abs(one.share - rule.aim) < std::abs(best->share - rule.aim)))
      best = &one;
  }
  if (best == nullptr) {
    choice.why_none = "the series reaches from " + base::to_terminal(shown(series.from, Unit::millimetre)) + " to " +
                      base::to_terminal(shown(series.to, Unit::millimetre)) + " in steps of " +
                      base::to_terminal(shown(series.step, Unit::millimetre));
    add_nearest(series, rule, sizes, seat, choice);
    return choice;
  }
  choice.best = best->size;
  // Outwards from the best, both ways, up to and with the first size outside the band.
  const auto at = best - sizes.data();
  const auto outside = [](const OtherSize& one) { return one.verdict != Code::within_band; };
  auto first = at;
  while (first > 0 && (first == at || !outside(sizes[static_cast<std::size_t>(first)]))) --first;
  auto end = at;
  while (end < last && (end == at || !outside(sizes[static_cast<std::size_t>(end)]))) ++end;
  for (auto i = first; i <= end; ++i) {
    OtherSize one = sizes[static_cast<std::size_t>(i)];
    if (i == at) continue;
    one.why = why_not(rule, one.share, one.size, best->size);
    choice.others.push_back(std::move(one));
  }
  return choice;
}

Amount size_tolerance(Ask& ask, const Series& series, double size) {
  if (series.inside_tolerance) return *series.inside_tolerance;
  if (series.flat) return exactly(0);
  const Amount factor = ask.row("ring-tolerances", "inside", "factor", Unit::one);
  const Amount power = ask.row("ring-tolerances", "inside", "power", Unit::one);
  const Amount constant = ask.row("ring-tolerances", "inside", "constant", Unit::millimetre);
  return over<3>({factor, power, constant}, [size](const auto& p) { return p[0] * std::pow(size, p[1]) + p[2]; });
}

}  // namespace benchleaf::bench
