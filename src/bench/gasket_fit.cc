// In: a measure and what it is of (seat=, bore=, face=, old-inside=, old-outside=), section=, series=, the groove. Out: the
// size of the series that sits, why its neighbours do not, stretch, section after it, squeeze and fill. Without the groove the
// answer is about the diameter alone, and says so, with the depths of groove that the section is made for.

#include "bench/gasket_fit.h"

#include <optional>
#include <string>

#include "base/number.h"
#include "base/quantity.h"
#include "bench/calculation.h"
#include "bench/gasket_groove.h"
#include "bench/gasket_sizes.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "gasket-fit";
constexpr Plausible kDiameter{0.3, 120};  // mm
constexpr int kSizeDigits = 6;            // as short as it can be
constexpr const char* kMeasures[] = {"seat", "bore", "face", "old-inside", "old-outside"};

std::string mm(double value) { return shown(value, Unit::millimetre); }
std::string percent(double value) { return shown(value, 2, Unit::percent); }

/// Runs gasket-fit once.
class Fit {
 public:
  Fit(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    find_measure();
    if (ask_.failed()) return;
    series_ = read_series(ask_);
    if (ask_.failed()) return;
    needs_section();
    find_seat();
    rule_ = read_size_rule(ask_, of_, series_);
    if (ask_.has("groove-width") && !ask_.has("groove-depth"))
      ask_.fail("groove-width", "needs groove-depth beside it: alone it says nothing");
    moving_ = ask_.choice("moving", {"yes", "no"}, series_.moving ? "yes" : "no") == "yes";
    if (ask_.failed()) return;
    warn_about_old();
    if (series_.named) {
      pick();
    } else {
      ideal();
    }
    if (ask_.failed()) return;
    hints();
  }

 private:
  void find_measure() {
    for (const char* name : kMeasures) {
      if (!ask_.has(name)) continue;
      if (!measure_.empty()) ask_.fail(name, "cannot stand beside " + measure_ + ": give the one that was measured");
      measure_ = name;
    }
    if (measure_.empty()) {
      ask_.fail("seat", "is missing: say what was measured, seat, bore, face, old-inside or old-outside");
      return;
    }
    given_ = ask_.amount(measure_, Unit::millimetre, kDiameter);
    of_ = measure_ == "bore" ? Measured::bore : measure_ == "face" ? Measured::face : Measured::boss;
  }

  void needs_section() {
    const bool outside = measure_ == "bore" || measure_ == "old-outside";
    if (outside && !series_.section)
      ask_.fail("section", "is missing: the outside of a gasket is its inside and twice its section");
  }

  /// The seat as measured; of an old gasket, what the seat is if the gasket is fully set, and the other end if it is not.
  void find_seat() {
    if (ask_.failed()) return;
    seat_ = given_;
    if (measure_ == "old-outside") seat_ = given_ - exactly(2) * *series_.section;
    if (measure_ != "old-inside" && measure_ != "old-outside") return;
    const Amount stretch = ask_.row("bench-rules", "old-gasket-set", "value", Unit::percent);
    if (measure_ == "old-outside") answer_.step("inside of the old gasket: " + mm(seat_.nominal));
    not_set_ = seat_ * (exactly(1) + stretch / exactly(100));
  }

  void warn_about_old() {
    if (!not_set_) return;
    answer_.caution("", "An old gasket is set: its inside is no measure of the seat. Measure the seat, in two directions.");
  }

  void pick() {
    const SizeChoice choice = choose_size(series_, rule_, seat_.nominal);
    if (not_set_) {
      pick_of_old(choice);
      return;
    }
    if (!choice.best && !choice.nearest.empty()) {
      name_nearest(choice);
      return;
    }
    if (!choice.best) {
      ask_.fail(measure_, "no size of " + ask_.title(series_.record) + " fits " + mm(seat_.nominal) + ": " + choice.why_none);
      return;
    }
    put_size(*choice.best, seat_);
    for (const auto& other : choice.others) {
      answer_.decide("rejected", other.verdict, mm(other.size) + ": " + verdict(other), rests_on());
      add_size(other.size, other.share, other.verdict);
    }
    groove(*choice.best);
  }

  /// Between two sizes: neither is in the band, and the reader chooses by what each would do.
  void name_nearest(const SizeChoice& choice) {
    answer_.formula(rule_.formula, rule_.source, rule_.trust);
    for (const auto& one : choice.nearest) {
      Output& output = answer_.decide("nearest", one.verdict, mm(one.size) + ": " + verdict(one), rests_on());
      output.record = series_.record;
      add_size(one.size, one.share, one.verdict, true);
    }
    answer_.step("none of its sizes on " + mm(seat_.nominal) + " has a " + std::string(code_text(rule_.measure)) + " within " +
                 band_words());
    answer_.holds(
        "Measure the seat again, in three directions. Between two sizes another series or a maker's own gasket is looked for.");
    if (ask_.has("groove-depth")) answer_.holds("The groove was left out: no size sits.");
    answer_.lacks("size", series_.record);
  }

  std::string band_words() const {
    return rule_.of_flat ? shown(rule_.low, 2, Unit::millimetre) + " to " + shown(rule_.high, 2, Unit::millimetre)
                         : rule_.band_printed;
  }

  /// Both ends of what the seat can be.
  void pick_of_old(const SizeChoice& set) {
    const SizeChoice fresh = choose_size(series_, rule_, not_set_->nominal);
    if (!set.best || !fresh.best) {
      ask_.fail(measure_, "no size of " + ask_.title(series_.record) + " fits: measure the seat");
      return;
    }
    const std::string one = mm(*set.best);
    const std::string other = mm(*fresh.best);
    answer_.formula("seat = inside if fully set, inside x (1 + stretch) if not", "usage of the bench", model::Trust::memory);
    answer_.decide("size", one == other ? Code::best : Code::not_told,
                   one == other ? one : one + " or " + other + ": measure the seat", rests_on());
    add_size(*set.best, rule_.share(*set.best, seat_.nominal), Code::best);
    if (one != other) add_size(*fresh.best, rule_.share(*fresh.best, not_set_->nominal), Code::within_band);
    if (one != other) answer_.lacks("seat", series_.record);
    answer_.step("fully set: the seat is " + mm(seat_.nominal) + ", and " + one + " sits at " +
                 percent(rule_.share(*set.best, seat_.nominal)));
    answer_.step("not set: the seat is about " + shown(not_set_->nominal, 2, Unit::millimetre) + ", and " + other + " sits at " +
                 percent(rule_.share(*fresh.best, not_set_->nominal)));
    if (one != other) answer_.caution("", "The answer may be " + other + ", if the old gasket had not set fully.");
    inside_ = exactly(*set.best);
    inside_.facts = series_.facts;
    inside_.trust = series_.trust;
    chosen_by_rule(inside_);
    groove(*set.best);
  }

  void add_size(double size, double share, Code verdict, bool nearest = false) {
    Amount inside = exactly(size);
    inside.trust = rests_on().trust;
    Amount of_it = exactly(share);
    of_it.trust = inside.trust;
    answer_.add(SizeItem{series_.record, figure_of(inside, kSizeDigits, Unit::millimetre), rule_.measure,
                         figure_of(of_it, 2, rule_.of_flat ? Unit::millimetre : Unit::percent), verdict, nearest});
  }

  /// Which size it is follows from the band of stretch or play.
  void chosen_by_rule(Amount& inside) const {
    inside.trust = model::weaker(inside.trust, rule_.trust);
    inside.facts.insert(inside.facts.end(), rule_.facts.begin(), rule_.facts.end());
  }

  void put_size(double size, const Amount& seat) {
    Amount inside = exactly(size);
    inside.facts = series_.facts;
    inside.trust = series_.trust;
    const Amount tolerance = size_tolerance(ask_, series_, size);
    if (ask_.failed()) return;
    inside.low = size - tolerance.nominal;
    inside.high = size + tolerance.nominal;
    inside.has_ends = tolerance.nominal > 0;
    inside.trust = model::weaker(inside.trust, tolerance.trust);
    inside.facts.insert(inside.facts.end(), tolerance.facts.begin(), tolerance.facts.end());
    chosen_by_rule(inside);
    answer_.formula(rule_.formula, rule_.source, rule_.trust);
    answer_.decide("size", Code::best, mm(size), rests_on()).record = series_.record;
    add_size(size, rule_.share(size, seat.nominal), Code::best);
    const SizeRule& rule = rule_;
    const Amount share = over<2>({inside, seat}, [&rule](const auto& p) { return rule.share(p[0], p[1]); });
    answer_.step(size_words(size, seat.nominal) + " = " + (rule_.of_flat ? mm(share.nominal) : percent(share.nominal)));
    if (rule_.of_flat) {
      answer_.put("play", share, Unit::millimetre);
    } else {
      answer_.put(code_word(rule_.measure), share, Unit::percent);
      answer_.holds("Sought: " + rule_.band_printed + ", " + rule_.aim_printed + " at best.");
    }
    say_stand(share);
    if (share.has_ends) {
      answer_.holds("The ends are those of the size: " + mm(size) + " \xC2\xB1" + base::fixed_text(tolerance.nominal, 2) +
                    ". Measure the gasket that came out of the bag.");
    }
    answer_.nominal_only(share, "the size");
    inside_ = inside;
  }

  /// Whether the size still sits at the ends of its tolerance.
  void say_stand(const Amount& share) {
    const bool below = share.low < rule_.low;
    const bool above = share.high > rule_.high;
    const Code stand = below && above ? Code::perhaps_outside
                       : below        ? Code::perhaps_below
                       : above        ? Code::perhaps_above
                                      : Code::within_band;
    answer_.last().code = stand;
    if (stand == Code::within_band) return;
    const std::string how = below && above ? "too loose or too tight" : below ? "too loose" : "too tight";
    answer_.caution("", "By its tolerance this size may come out " + how + " (sought: " + band_words() +
                            "): measure the gasket itself before it goes in.");
  }

  /// The formula with its figures: `100 (31.85 mm - 31 mm) / 31 mm`.
  std::string size_words(double size, double seat) const {
    if (rule_.of_flat) return mm(seat) + " - " + mm(size);
    if (rule_.of != Measured::bore) return "100 (" + mm(seat) + " - " + mm(size) + ") / " + mm(size);
    const std::string outside = mm(size + 2 * rule_.section);
    return "100 (" + outside + " - " + mm(seat) + ") / " + outside;
  }

  std::string verdict(const OtherSize& other) const {
    const std::string share =
        rule_.of_flat ? mm(other.share) : percent(other.share) + (rule_.of == Measured::bore ? " interference" : " stretch");
    return share + ", " + other.why;
  }

  void groove(double size) {
    if (series_.flat) {
      refuse_groove_of_flat();
      if (ask_.failed()) return;
      flat_groove(ask_, answer_, series_);
      if (!series_.section) diameter_only();
      return;
    }
    if (!series_.section) {
      if (ask_.has("groove-depth")) ask_.fail("groove-depth", "cannot be used: the record states no section; give section=");
      diameter_only();
      return;
    }
    if (!ask_.has("groove-depth")) {
      diameter_only();
      return;
    }
    put_groove(ask_, answer_, {series_, rule_.of, inside_, seat_, size, moving_});
  }

  void refuse_groove_of_flat() {
    if (ask_.has("groove-width"))
      ask_.fail("groove-width", "belongs to a round gasket: of a flat one the depth alone is reckoned");
    if (ask_.has("groove-depth") && !series_.height)
      ask_.fail("groove-depth", "cannot be used: the record states no height of the gasket");
  }

  void diameter_only() {
    if (series_.section && !series_.flat) put_depths(ask_, answer_, series_, moving_);
    answer_.decide("section-verdict", Code::not_told, "diameter only, section not proven", rests_on());
    answer_.lacks("groove", series_.record);
    answer_.holds(
        "To find the groove: press soft putty into it, close the back, open it, measure the putty: its height is the depth.");
  }

  /// No series named: which inside a gasket ought to have.
  void ideal() {
    if (rule_.of == Measured::bore) {
      ask_.fail("series", "is missing: which sizes are there");
      return;
    }
    answer_.formula("inside = seat / (1 + stretch)", rule_.source, rule_.trust);
    const auto inside_for = [this](double stretch) {
      Amount inside = seat_ / exactly(1 + stretch / 100);
      inside.facts.insert(inside.facts.end(), rule_.facts.begin(), rule_.facts.end());
      return inside;
    };
    answer_.put("ideal-inside", inside_for(rule_.aim), Unit::millimetre);
    answer_.step(mm(seat_.nominal) + " by 1 and " + rule_.aim_printed + " is the best inside; the ends by " + rule_.band_printed);
    Amount from = inside_for(rule_.high);
    Amount to = inside_for(rule_.low);
    answer_.put("least-inside", from, Unit::millimetre);
    answer_.put("most-inside", to, Unit::millimetre);
    if (ask_.has("groove-depth") && !series_.section) {
      ask_.fail("section", "is missing: without it the depth of the groove says nothing");
      return;
    }
    inside_ = inside_for(rule_.aim);
    groove(inside_.nominal);
  }

  Amount rests_on() const {
    Amount amount = detail::resting_on({seat_});
    amount.trust = model::weaker(amount.trust, series_.trust);
    amount.facts.insert(amount.facts.end(), series_.facts.begin(), series_.facts.end());
    amount.facts.insert(amount.facts.end(), rule_.facts.begin(), rule_.facts.end());
    return amount;
  }

  void hints() {
    if (measure_ == "seat")
      answer_.holds(
          "Measured was the seat, the outside of the boss or step that the gasket is drawn over. An inside of an old gasket is "
          "another measure and gives another answer.");
    if (measure_ == "bore") answer_.holds("Measured was the bore, the inside of the wall that the gasket lies against.");
    if (measure_ == "face") answer_.holds("Measured was the inner wall of a groove in a face.");
    answer_.caution("", "Measure the gasket that came out of the bag: bags are mixed up, and sizes scatter.");
    answer_.beware(ask_.caution("gasket-fit water"));
  }

  Ask& ask_;
  Answer& answer_;
  std::string measure_;
  Measured of_ = Measured::boss;
  Amount given_, seat_, inside_;
  std::optional<Amount> not_set_;
  Series series_;
  SizeRule rule_;
  bool moving_ = false;
};

Result gasket_fit(const Inputs& inputs, const Context& context) {
  return calculate<Fit>(gasket_fit_calculator(), inputs, context);
}

}  // namespace

Calculator gasket_fit_calculator() {
  return {kName,
          "which size of a gasket sits, and whether its section is pressed enough",
          {{"seat", "outside of the boss that the gasket is drawn over", "31.85 mm", false},
           {"bore", "inside of the wall that the gasket lies against", "33.4 mm", false},
           {"face", "inner wall of a groove in a face", "28.6 mm", false},
           {"old-inside", "inside of the old gasket", "31.85 mm", false},
           {"old-outside", "outside of the old gasket", "33.4 mm", false},
           {"section", "thickness of the gasket", "0.8 mm", false},
           {"series", "a series of the handbook", "round-0-8", false},
           {"groove-depth", "depth of the groove with the back closed", "0.6 mm", false},
           {"groove-width", "width of the groove", "1.1 mm", false},
           {"moving", "yes for a crown or a pusher", "no", false}},
          gasket_fit,
          {{"size", "size"},
           {"rejected", "not"},
           {"nearest", "nearest"},
           {"stretch", "stretch", 2},
           {"interference", "interference", 2},
           {"play", "play", 2},
           {"ideal-inside", "best inside", 2},
           {"least-inside", "smallest inside", 2, base::Rounding::up},
           {"most-inside", "largest inside", 2, base::Rounding::down},
           {"section-stretched", "section after stretch", 3},
           {"squeeze", "squeeze", 2},
           {"squeeze-verdict", "squeeze is"},
           {"fill", "fill", 2},
           {"fill-verdict", "fill is"},
           {"least-depth", "groove depth, least", 2, base::Rounding::up},
           {"most-depth", "groove depth, most", 2, base::Rounding::down},
           {"section-verdict", "section"}},
          "one of seat, bore, face, old-inside and old-outside"};
}

}  // namespace benchleaf::bench
