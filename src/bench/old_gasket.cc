// In: new=, now= and closed= of a gasket: section as made, as taken out, height of its groove. Out: how far it is set, how much
// it is still pressed, and whether it is kept or renewed.

#include "bench/old_gasket.h"

#include <string>

#include "base/quantity.h"
#include "bench/calculation.h"
#include "standards/ring.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "old-gasket";
constexpr Plausible kThickness{0.05, 10};  // mm

class OldGasket {
 public:
  OldGasket(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    made_ = ask_.amount("new", Unit::millimetre, kThickness);
    now_ = ask_.amount("now", Unit::millimetre, kThickness);
    closed_ = ask_.amount("closed", Unit::millimetre, kThickness);
    const bool moving = ask_.choice("moving", {"yes", "no"}, "no") == "yes";
    limit_ = ask_.row("bench-rules", "gasket-set-most", "value", Unit::percent);
    band_ = ask_.row("gland-limits", moving ? "moving-squeeze" : "static-squeeze", "band", Unit::percent);
    check_order();
    if (ask_.failed()) return;
    put_set();
    put_squeeze();
    verdict();
    close();
  }

 private:
  void check_order() {
    if (ask_.failed()) return;
    if (closed_.nominal >= made_.nominal) ask_.fail("closed", "is no less than the gasket was when new: it was never pressed");
    if (now_.nominal > made_.nominal)
      ask_.fail("now", "is more than it was when new: a gasket that swells has met oil or solvent, and is renewed");
  }

  void put_set() {
    set_ = over<3>({made_, now_, closed_}, [](const auto& p) { return 100 * (p[0] - p[1]) / (p[0] - p[2]); });
    answer_.formula("set = 100 (new - now) / (new - closed)", "ISO 815-1 and ASTM D395, method B, as pages on rubber print it",
                    model::Trust::trade);
    answer_.put("set", set_, Unit::percent);
    answer_.step("100 (" + shown(made_, Unit::millimetre) + " - " + shown(now_, Unit::millimetre) + ") / (" +
                 shown(made_, Unit::millimetre) + " - " + shown(closed_, Unit::millimetre) + ")");
  }

  void put_squeeze() {
    squeeze_ = over<2>({now_, closed_}, [](const auto& p) { return standards::squeeze_percent(p[0], p[1]); });
    answer_.formula("squeeze = 100 (now - closed) / now", "seal maker's design guide; limits of the table gland-limits",
                    band_.trust);
    answer_.put("squeeze", squeeze_, Unit::percent);
  }

  void verdict() {
    const bool set = set_.high > limit_.nominal;
    const bool loose = squeeze_.low < band_.low;
    Amount rests_on = detail::resting_on({set_, squeeze_, limit_, band_});
    if (!set && !loose) {
      answer_.decide("verdict", Code::keep, "it still springs back: for a try it may go in again", rests_on);
      return;
    }
    std::string why = set ? "it is set by more than " + shown(limit_, Unit::percent) : "";
    if (loose) why += std::string(set ? ", and " : "") + "it would be pressed by less than " + shown(band_.low, Unit::percent);
    answer_.decide("verdict", Code::renew, "renew it: " + why, rests_on);
  }

  void close() {
    answer_.holds("Measured half an hour after it came out, in three places; dirt and grease wiped off.");
    answer_.caution("", "A gasket costs less than opening the watch again: once out, a new one goes in, whatever the figure.");
    answer_.beware(ask_.caution("old-gasket water"));
    answer_.nominal_only(set_, "the three measures");
  }

  Ask& ask_;
  Answer& answer_;
  Amount made_, now_, closed_, limit_, band_, set_, squeeze_;
};

Result old_gasket(const Inputs& inputs, const Context& context) {
  return calculate<OldGasket>(old_gasket_calculator(), inputs, context);
}

}  // namespace

Calculator old_gasket_calculator() {
  return {
      kName,
      "how far an old gasket is set, and whether to renew it",
      {{"new", "section or height of a new one", "1.00 mm", true},
       {"now", "of the old one, half an hour after it came out", "0.90 mm", true},
       {"closed", "depth of its groove with the back closed", "0.75 mm", true},
       {"moving", "yes for a crown or a pusher", "no", false}},
      old_gasket,
      {{"set", "set", 1, base::Rounding::up}, {"squeeze", "still pressed by", 1, base::Rounding::down}, {"verdict", "verdict"}}};
}

}  // namespace benchleaf::bench
