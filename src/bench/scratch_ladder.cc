// In: scratch= as a depth or as what a nail tells, the grades at hand or a scale, thickness=, material=, diameter=. Out: the
// ladder of grades with what each takes away, what is left of the crystal, and whether that still stands a thumb.

#include "bench/scratch_ladder.h"

#include <algorithm>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "bench/calculation.h"
#include "bench/crystal_thickness.h"
#include "bench/grades.h"
#include "model/record_ref.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "scratch-ladder";
constexpr Plausible kDepth{0.1, 2000};    // micrometres
constexpr Plausible kThickness{0.2, 20};  // mm
constexpr double kMicrometres = 1000;     // in a millimetre
constexpr std::size_t kMostGrades = 20;

class Ladder {
 public:
  Ladder(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    read_material();
    read_depth();
    factor_ = ask_.row("bench-rules", "grain-depth", "value", Unit::one);
    if (!ask_.failed()) read_rungs();
    if (ask_.failed()) return;
    climb();
    put_removal();
    if (ask_.has("thickness")) left();
    if (!ask_.failed()) close();
  }

 private:
  void read_material() {
    material_ = ask_.has("material")
                    ? ask_.record("material", {"material"})
                    : model::RecordRef(model::Kind::material, ask_.row_word("bench-rules", "usual-crystal", "value")).text();
    if (ask_.failed()) return;
    if (ask_.word(material_, "kind") == "mineral")
      ask_.fail("material", "sapphire is cut by diamond alone, and a coated face by nothing: it is replaced");
    const std::string kind = ask_.word(material_, "kind");
    if (kind == "metal" || kind == "rubber" || kind == "film") ask_.fail("material", ask_.title(material_) + " is no crystal");
  }

  void read_depth() {
    if (ask_.failed()) return;
    const std::string text = ask_.text("scratch");
    const bool words = text.find_first_of("0123456789") == std::string::npos;
    if (words && text != "nail-catches" && text != "seen-only") {
      ask_.fail("scratch", "is neither a depth nor nail-catches nor seen-only");
      return;
    }
    depth_ = text == "nail-catches" || text == "seen-only" ? ask_.row("bench-rules", text, "value", Unit::micrometre)
                                                           : ask_.amount("scratch", Unit::micrometre, kDepth);
  }

  /// The grades that can be rungs, coarsest first.
  void read_rungs() {
    if (!ask_.has("grades")) {
      hand_ = grades_of_scale(ask_, "scale", ask_.has("scale") ? ask_.text("scale") : std::string("P"));
      whole_scale_ = true;
      return;
    }
    if (ask_.has("scale")) ask_.fail("scale", "cannot stand beside grades");
    std::string rest = ask_.text("grades");
    while (!rest.empty() && !ask_.failed()) {
      const std::size_t comma = std::min(rest.find(','), rest.size());
      std::string name = rest.substr(0, comma);
      rest = rest.substr(std::min(comma + 1, rest.size()));
      name.erase(0, std::min(name.find_first_not_of(' '), name.size()));
      name.erase(name.find_last_not_of(' ') + 1);
      const auto found = grade_named(ask_, "grades", name);
      if (!found) return;
      hand_.push_back(*found);
      if (hand_.size() > kMostGrades) ask_.fail("grades", "are more than twenty");
    }
    std::stable_sort(hand_.begin(), hand_.end(),
                     [](const Grade& one, const Grade& other) { return one.median.nominal > other.median.nominal; });
    if (hand_.empty()) ask_.fail("grades", "are missing");
  }

  /// The finest grade whose pits are as deep as the scratch is thought to be; the coarsest at hand where none is coarse enough.
  std::size_t start() const {
    std::size_t first = 0;
    for (std::size_t i = 0; i < hand_.size(); ++i) {
      if (hand_[i].median.nominal * factor_.nominal >= depth_.nominal) first = i;
    }
    return first;
  }

  void climb() {
    ratio_ = ask_.row("bench-rules", "step-ratio", "value", Unit::one);
    std::size_t at = start();
    rungs_.push_back(hand_[at]);
    while (at + 1 < hand_.size()) {
      std::size_t next = at + 1;
      // Of a whole scale, the longest step that is still short enough; of what is at hand, each.
      while (whole_scale_ && next + 1 < hand_.size() && hand_[at].median.nominal / hand_[next + 1].median.nominal <= ratio_.high)
        ++next;
      const double step = hand_[at].median.nominal / hand_[next].median.nominal;
      if (step > ratio_.high)
        answer_.caution("", "From " + hand_[at].name + " to " + hand_[next].name +
                                " the grain falls to less than half: a grade between saves work.");
      at = next;
      rungs_.push_back(hand_[at]);
    }
  }

  /// Which grades were taken follows from their grains, the depth of their pits and the longest step.
  Amount choice_rests_on() const {
    std::vector<Amount> inputs = {depth_, factor_};
    if (whole_scale_) inputs.push_back(ratio_);
    for (const auto& rung : rungs_) inputs.push_back(rung.median);
    return detail::resting_on(inputs);
  }

  void put_removal() {
    answer_.formula("first the scratch itself, then factor x median grain of the grade before",
                    "mirror makers' rule, factor 2: pits are "
                    "about twice the grain",
                    model::Trust::handbook);
    std::string names;
    for (std::size_t i = 0; i < rungs_.size(); ++i) {
      names += (names.empty() ? "" : ", ") + rungs_[i].name;
      const Amount removal = i == 0 ? depth_ : factor_ * rungs_[i - 1].median;
      answer_.add(Rung{rungs_[i].scale, rungs_[i].name, figure_of(rungs_[i].median, 1, Unit::micrometre),
                       figure_of(removal, 1, Unit::micrometre)});
    }
    const Amount choice = choice_rests_on();
    answer_.say("ladder", names + ", then polish", choice);
    answer_.say("start", rungs_.front().name, choice);
    answer_.say("stop", "polish after " + rungs_.back().name, choice);
    Amount ladder = exactly(0);
    answer_.step(rungs_.front().name + ": takes the scratch, " + shown(depth_, Unit::micrometre));
    for (std::size_t i = 0; i < rungs_.size(); ++i) {
      const Amount pits = factor_ * rungs_[i].median;
      ladder = ladder + pits;
      const std::string next = i + 1 < rungs_.size() ? rungs_[i + 1].name : std::string("polish");
      answer_.step(next + ": takes the pits of " + rungs_[i].name + ", " + shown(pits.nominal, 1, Unit::micrometre));
    }
    removal_ = depth_ + ladder;
    answer_.put("ladder-removal", ladder, Unit::micrometre);
    answer_.put("removal", removal_, Unit::micrometre);
    if (rungs_.front().median.nominal * factor_.nominal < depth_.nominal)
      answer_.caution(
          "", "No grade at hand is as coarse as the scratch is deep: the first one works long, and a coarser saves time.");
  }

  void left() {
    const Amount thickness = ask_.amount("thickness", Unit::millimetre, kThickness);
    if (ask_.failed()) return;
    const Amount left = thickness - removal_ / exactly(kMicrometres);
    if (left.low <= 0) {
      ask_.fail("scratch", "and its ladder take more than the crystal is thick");
      return;
    }
    answer_.put("left", left, Unit::millimetre);
    if (ask_.has("diameter")) holds_still(left);
  }

  /// Asks crystal-thickness about what is left, at its thin end.
  void holds_still(const Amount& left) {
    const Given material{model::RecordRef(material_).id(), model::Trust::given, {}};
    const Given diameter{ask_.text("diameter"), model::Trust::given, {}};
    const Given thin{base::to_terminal(shown(left.low, 3, Unit::millimetre)), left.trust, {}};
    const Calculator crystal = crystal_thickness_calculator();
    const Inputs inputs = {
        {"diameter", diameter}, {"thickness", thin}, {"material", material}, {"edge", {"simple", model::Trust::given, {}}}};
    const Result result = crystal.run(inputs, ask_.context());
    if (result.refusal && result.refusal->input != "thickness") {
      ask_.fail("diameter", result.refusal->reason);
      return;
    }
    const Output* verdict = result.find("verdict");
    answer_.formula("crystal-thickness with what is left, thumb, free edge", "that calculator", model::Trust::memory);
    if (verdict == nullptr) {
      answer_.decide("still-holds", Code::not_told, "cannot be told: it " + result.refusal->reason, left);
      answer_.lacks("strength", material_);
      return;
    }
    answer_.decide("still-holds", verdict->code, verdict->printed, left);
  }

  void close() {
    answer_.beware(ask_.caution("scratch-ladder dust"));
    if (ask_.word(material_, "kind") == "glass")
      answer_.caution(
          "", "A new glass costs less than an hour of polishing. Depth in glass is more than what is seen: cracks run on below.");
    if (!ask_.has("thickness"))
      answer_.holds(
          "Without thickness= nobody knows what is left. Out of the case: callipers with soft jaws. In it: the height of the "
          "rim, "
          "and the crystal bare of its step.");
    answer_.holds("A scratch in acrylic that stays after the first grade is deeper than thought: stop and measure.");
    answer_.caution("", "Each grade crosswise to the one before, until no line of the last is left; case masked, crystal cool.");
    answer_.nominal_only(removal_, "the scratch");
  }

  Ask& ask_;
  Answer& answer_;
  std::string material_;
  Amount depth_, factor_, ratio_, removal_;
  std::vector<Grade> hand_, rungs_;
  bool whole_scale_ = false;
};

Result scratch_ladder(const Inputs& inputs, const Context& context) {
  return calculate<Ladder>(scratch_ladder_calculator(), inputs, context);
}

}  // namespace

Calculator scratch_ladder_calculator() {
  return {kName,
          "which grades take a scratch out, and what is left of the crystal",
          {{"scratch", "a depth, nail-catches or seen-only", "0.04 mm", true},
           {"thickness", "of the crystal", "1.5 mm", false},
           {"material", "of the crystal; acrylic if left out", "acrylic", false},
           {"grades", "at hand", "P600,P1000,P1500,P2500", false},
           {"scale", "instead of grades: all of a scale; P if left out", "P", false},
           {"diameter", "free span, to see whether what is left stands a thumb", "26 mm", false}},
          scratch_ladder,
          {{"ladder", "ladder"},
           {"start", "start with"},
           {"stop", "stop with"},
           {"ladder-removal", "ladder takes", 1, base::Rounding::up},
           {"removal", "taken in all", 1, base::Rounding::up},
           {"left", "left", 3, base::Rounding::down},
           {"still-holds", "what is left"}}};
}

}  // namespace benchleaf::bench
