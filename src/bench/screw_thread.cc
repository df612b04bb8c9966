// In: diameter= over the crests of a screw and pitch=, or over= and crests= to count it. Out: the threads of the table
// miniature-threads that it can be. A screw measures less than its nominal, never more.

#include "bench/screw_thread.h"

#include <optional>
#include <string>
#include <utility>

#include "base/quantity.h"
#include "bench/calculation.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "screw-thread";
constexpr std::string_view kTable = "miniature-threads";
constexpr Plausible kDiameter{0.2, 2.5};  // mm
constexpr Plausible kPitch{0.04, 0.6};    // mm
constexpr Plausible kOver{0.1, 10};       // mm
constexpr Plausible kCrests{3, 80};
constexpr double kSlip = 1e-9;  // of binary fractions

class Thread {
 public:
  Thread(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    diameter_ = ask_.amount("diameter", Unit::millimetre, kDiameter);
    read_pitch();
    under_ = ask_.row("bench-rules", "thread-under", "value", Unit::millimetre);
    reading_ = ask_.row("bench-rules", "thread-reading", "value", Unit::millimetre);
    slack_ = ask_.row("bench-rules", "thread-pitch-slack", "value", Unit::percent);
    if (ask_.failed()) return;
    answer_.formula("diameter below the nominal by no more than wear and tolerance leave, pitch within its reading",
                    "ISO 1501 and ISO 261 by the table miniature-threads; slack by usage of the bench", model::Trust::memory);
    for (const auto& key : ask_.row_keys(std::string(kTable))) judge(key);
    answer_.step(shown(diameter_, Unit::millimetre) + " across, " +
                 (pitch_ ? "pitch " + figure_of(*pitch_, 3, Unit::millimetre).printed : std::string("pitch not given")));
    if (named_ == 0) none();
    close();
  }

 private:
  void read_pitch() {
    if (ask_.has("crests") != ask_.has("over")) {
      ask_.fail(ask_.has("crests") ? "over" : "crests", "is missing: the length over so many crests gives the pitch");
      return;
    }
    if (ask_.has("pitch") && ask_.has("over")) ask_.fail("over", "cannot stand beside pitch");
    if (ask_.failed()) return;
    if (ask_.has("pitch")) pitch_ = ask_.amount("pitch", Unit::millimetre, kPitch);
    if (!ask_.has("over")) return;
    const Amount over_crests = ask_.amount("over", Unit::millimetre, kOver);
    const Amount crests = ask_.amount("crests", Unit::one, kCrests);
    if (ask_.failed()) return;
    pitch_ = over<2>({over_crests, crests}, [](const auto& p) { return p[0] / (p[1] - 1); });
    answer_.put("pitch", *pitch_, Unit::millimetre);
    answer_.step(shown(over_crests, Unit::millimetre) + " over " + shown(crests, Unit::one) + " crests is one pitch fewer");
  }

  void judge(const std::string& key) {
    const auto diameter = ask_.row_if_any(std::string(kTable), key, "diameter", Unit::millimetre);
    const auto pitch = ask_.row_if_any(std::string(kTable), key, "pitch", Unit::millimetre);
    if (!diameter || !pitch) return;
    const bool too_thick = diameter_.low > diameter->nominal + reading_.nominal + kSlip;
    const bool too_thin = diameter_.high < diameter->nominal - under_.nominal - kSlip;
    if (too_thick || too_thin) return;
    const std::string size = shown(*diameter, Unit::millimetre) + " by " + shown(*pitch, Unit::millimetre) + ", " +
                             ask_.row_word(std::string(kTable), key, "series");
    if (!pitch_) {
      put(key, Code::perhaps, "perhaps: " + size + ", if that is its pitch",
          detail::resting_on({diameter_, *diameter, under_, reading_}));
      return;
    }
    const Amount rests_on = detail::resting_on({diameter_, *pitch_, *diameter, *pitch, under_, reading_, slack_});
    const double slack = pitch->nominal * slack_.nominal / 100 + kSlip;
    if (pitch_->low > pitch->nominal + slack) {
      put(key, Code::above_band, "not: " + size + ", and the pitch measured is coarser", rests_on);
    } else if (pitch_->high < pitch->nominal - slack) {
      put(key, Code::below_band, "not: " + size + ", and the pitch measured is finer", rests_on);
    } else {
      put(key, Code::fits, "fits: " + size, rests_on);
    }
  }

  void put(const std::string& key, Code code, std::string words, const Amount& rests_on) {
    if (code == Code::fits || code == Code::perhaps) ++named_;
    Output& output = answer_.decide("thread", code, std::move(words), rests_on);
    output.name = "thread." + key;
    output.label = key;
  }

  void none() {
    answer_.decide("none", Code::not_known, "no thread of these lists: it has one of its maker's own",
                   detail::resting_on({diameter_, pitch_.value_or(diameter_), under_, reading_, slack_}));
    answer_.lacks("thread");
  }

  void close() {
    if (!pitch_) answer_.lacks("pitch");
    answer_.holds("Measured over the crests, clean, away from the slotted end and from the last turn.");
    answer_.holds("Many watch screws have a thread of their maker's own: a screw of the same movement is the surest match.");
    answer_.caution("",
                    "A screw that binds in its first turn has another thread: back it out, it breaks off or strips the hole.");
  }

  Ask& ask_;
  Answer& answer_;
  Amount diameter_, under_, reading_, slack_;
  std::optional<Amount> pitch_;
  int named_ = 0;
};

Result screw_thread(const Inputs& inputs, const Context& context) {
  return calculate<Thread>(screw_thread_calculator(), inputs, context);
}

}  // namespace

Calculator screw_thread_calculator() {
  return {kName,
          "which thread a small screw has",
          {{"diameter", "of the screw, over its crests", "0.98 mm", true},
           {"pitch", "from crest to crest", "0.25 mm", false},
           {"over", "length over some crests, instead of a pitch", "2.0 mm", false},
           {"crests", "how many crests that length counts", "9", false}},
          screw_thread,
          {{"pitch", "pitch", 3}, {"thread", ""}, {"none", "thread"}},
          "diameter; and pitch, or over and crests"};
}

}  // namespace benchleaf::bench
