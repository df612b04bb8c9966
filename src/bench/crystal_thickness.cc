// In: shape and span of a flat crystal, thickness=, material, a named load. Out: stress, sag, safety and the least thickness,
// for free edges, which are the safe side, and for clamped ones; a real seat lies between. Never a depth of water.

#include "bench/crystal_thickness.h"

#include <optional>
#include <string>

#include "base/quantity.h"
#include "bench/calculation.h"
#include "bench/crystal_load.h"
#include "bench/print_rule.h"

namespace benchleaf::bench {
namespace {

using base::Unit;
using standards::Edge;

constexpr std::string_view kName = "crystal-thickness";
constexpr Plausible kThickness{0.1, 20};  // mm
constexpr double kMostSag = 0.5;          // of the thickness: beyond it small-deflection theory ends
constexpr double kThinnest = 0.25;        // thickness by half the span: beyond it a plate is no plate

/// Names of the outputs for one edge.
struct Names {
  const char *stress, *sag, *safety, *least;
};
constexpr Names kSimple{"stress", "sag", "safety", "least"};
constexpr Names kClamped{"stress-clamped", "sag-clamped", "safety-clamped", "least-clamped"};

class Crystal {
 public:
  Crystal(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    plate_ = read_crystal(ask_);
    if (ask_.has("thickness")) thickness_ = ask_.amount("thickness", Unit::millimetre, kThickness);
    const std::string edge = ask_.choice("edge", {"simple", "clamped"}, "");
    if (ask_.failed()) return;
    describe();
    if (edge != "clamped") one_edge(Edge::simple, kSimple, true);
    if (edge != "simple") one_edge(Edge::clamped, kClamped, edge == "clamped");
    if (ask_.failed()) return;
    close();
  }

 private:
  void describe() {
    answer_.formula(formula_of(), source_of(), model::Trust::handbook);
    if (plate_.pressure) {
      answer_.step("load: " + shown(*plate_.pressure, Unit::megapascal) + " all over");
    } else {
      answer_.step("load: " + plate_.load + ", " + shown(*plate_.force, Unit::newton) + " on a patch of " +
                   shown(*plate_.patch, Unit::millimetre));
    }
    answer_.step("material: modulus " + shown(plate_.modulus, Unit::megapascal) + ", Poisson ratio " +
                 shown(plate_.poisson, Unit::one) + ", strength " + shown(plate_.strength, Unit::megapascal));
  }

  std::string formula_of() const {
    if (!plate_.disc) return "free: sums of sin (m pi x / a) sin (n pi y / b) over odd m and n; stress 6 M / t², sag by D";
    if (plate_.pressure)
      return "clamped: 3 p a² / (4 t²), p a^4 / (64 D); free: 3 (3 + nu) p a² / (8 t²), (5 + nu) p a^4 / (64 (1 + nu) D); "
             "D = E t³ / (12 (1 - nu²))";
    return "free: 3 W / (2 pi t²) [(1 + nu) ln(a / r) + 1 - (1 - nu) r² / (4 a²)]; clamped: the larger of centre and rim";
  }

  std::string source_of() const {
    if (!plate_.disc) return "Navier's series, Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, chapter 5";
    if (plate_.pressure)
      return "Timoshenko, Strength of Materials II, 3rd ed., pages 96 and 97; Mechanical Engineer's Data Handbook, page 53";
    return "Timoshenko's theory of plates, load on a round patch in the centre";
  }

  void one_edge(Edge edge, const Names& names, bool decides) {
    const CrystalModel model(ask_, plate_, edge);
    if (ask_.failed()) return;
    if (!model.reaches(plate_)) {
      if (decides) ask_.fail("length", "is more than the published coefficients of a clamped rectangle reach");
      answer_.holds("Clamped: the published coefficients end at a shorter rectangle.");
      return;
    }
    if (!plate_.disc && edge == Edge::clamped)
      answer_.formula("clamped: coefficients of the ratio of the sides, Poisson ratio 0.3",
                      "Roark's Formulas for Stress and Strain, as the table plate-coefficients has them", model::Trust::memory);
    if (thickness_ && !loaded(model, names, decides)) return;
    if (plate_.material.empty()) return;  // no factor of safety is known
    const auto least = least_thickness(model, plate_);
    if (least) answer_.put(names.least, *least, Unit::millimetre);
    if (!least) answer_.holds("No thickness up to 20 mm keeps the safety asked for.");
  }

  bool loaded(const CrystalModel& model, const Names& names, bool decides) {
    const CrystalAnswer found = load_crystal(model, plate_, *thickness_);
    const double half = plate_.width.nominal / 2;
    const bool thick = thickness_->nominal > kThinnest * half;
    const bool large = found.sag.nominal > kMostSag * thickness_->nominal;
    if (thick || large) {
      const std::string why = thick ? "it is thicker than a quarter of half the span"
                                    : "it would sag by " + base::to_terminal(shown(found.sag.nominal, 3, Unit::millimetre)) +
                                          ", more than half its thickness";
      if (decides) ask_.fail("thickness", "lies outside small-deflection theory: " + why, thicker(model));
      return false;
    }
    answer_.put(names.stress, found.stress, Unit::megapascal);
    answer_.put(names.sag, found.sag, Unit::millimetre);
    const Amount safety = plate_.strength / found.stress;
    const std::string unit_words = " times the stress";
    Output& output = answer_.put(names.safety, safety, Unit::one);
    output.printed += unit_words;
    if (decides && !plate_.material.empty()) verdict(safety);
    return true;
  }

  /// What would be thick enough, for the hint.
  std::string thicker(const CrystalModel& model) const {
    const auto least = plate_.material.empty() ? std::nullopt : least_thickness(model, plate_);
    const OutputInfo* rule = print_rule(kName, kSimple.least);
    if (!least || rule == nullptr || least->nominal <= thickness_->nominal) return {};
    return "the safety asked for begins at " + base::to_terminal(base::printed(figure(*rule, least->nominal), Unit::millimetre));
  }

  void verdict(const Amount& safety) {
    const bool enough = safety.low >= plate_.safety.nominal;
    answer_.decide("verdict", enough ? Code::stands : Code::does_not_stand,
                   enough ? "stands this load with the safety asked for, " + shown(plate_.safety, Unit::one) + " times"
                          : "does not keep the safety asked for, " + shown(plate_.safety, Unit::one) + " times, under this load",
                   safety);
  }

  void close() {
    answer_.holds("A flat crystal, without scratches at its rim, under this load alone. A dome is stiffer and lies outside.");
    answer_.holds("Free edges are the safe side; a real seat lies between free and clamped.");
    if (!plate_.disc) limits_of_rows();
    if (plate_.load == "press") answer_.beware(ask_.caution("crystal-thickness press"));
    answer_.beware(ask_.caution("crystal-thickness water"));
    if (thickness_) answer_.nominal_only(*thickness_ + plate_.width, "thickness and span");
  }

  /// What the published rows leave out.
  void limits_of_rows() {
    if (plate_.force) answer_.holds("Clamped, the sag is that of a force on a point, which is more than on the patch.");
    const Amount tabled = ask_.row("bench-rules", "plate-poisson", "value", Unit::one);
    if (plate_.poisson.nominal <= tabled.nominal) return;
    const double more = 100 * ((1 + plate_.poisson.nominal) / (1 + tabled.nominal) - 1);
    answer_.holds("Clamped, the coefficients are those of a Poisson ratio of " + shown(tabled, Unit::one) + ": with " +
                  shown(plate_.poisson, Unit::one) + " the stress in the middle is up to " + shown(more, 1, Unit::percent) +
                  " more.");
  }

  Ask& ask_;
  Answer& answer_;
  CrystalPlate plate_;
  std::optional<Amount> thickness_;
};

Result crystal_thickness(const Inputs& inputs, const Context& context) {
  return calculate<Crystal>(crystal_thickness_calculator(), inputs, context);
}

}  // namespace

Calculator crystal_thickness_calculator() {
  return {kName,
          "whether a flat crystal stands a named load, and how thick it must be",
          {{"shape", "disc or rectangle", "disc", false},
           {"diameter", "free span of a disc", "26 mm", false},
           {"width", "short side of a rectangle", "20 mm", false},
           {"length", "long side of a rectangle", "26 mm", false},
           {"thickness", "of the crystal", "1.5 mm", false},
           {"load", "thumb, press or splash", "thumb", false},
           {"pressure", "a pressure, instead of a load", "0.3 bar", false},
           {"material", "a material of the handbook", "acrylic", false},
           {"modulus", "stiffness, where no material is named", "3 GPa", false},
           {"poisson", "Poisson ratio, where no material is named", "0.37", false},
           {"strength", "where no material is named", "70 MPa", false},
           {"edge", "simple (free) or clamped; both if left out", "simple", false}},
          crystal_thickness,
          {{"stress", "stress, free edge", 1, base::Rounding::up},
           {"sag", "sag, free edge", 3, base::Rounding::up},
           {"safety", "safety, free edge", 2, base::Rounding::down},
           {"least", "least thickness, free edge", 3, base::Rounding::up},
           {"stress-clamped", "stress, clamped", 1, base::Rounding::up},
           {"sag-clamped", "sag, clamped", 3, base::Rounding::up},
           {"safety-clamped", "safety, clamped", 2, base::Rounding::down},
           {"least-clamped", "least thickness, clamped", 3, base::Rounding::up},
           {"verdict", "verdict"}},
          "diameter, or width and length; and material, or modulus, poisson and strength"};
}

}  // namespace benchleaf::bench
