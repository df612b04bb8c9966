// In: layer= or mark= with year=, grade= or scale=. Out: how the grain of an abrasive stands to the gold that is there.

#include "bench/gold_margin.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "base/ascii.h"
#include "base/id.h"
#include "base/number.h"
#include "base/quantity.h"
#include "bench/calculation.h"
#include "bench/gold_mark.h"
#include "bench/grades.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "gold-margin";
constexpr Plausible kLayer{0.01, 2000};  // micrometres
constexpr Plausible kYear{1850, 2100};
constexpr Plausible kFineness{300, 1000};
constexpr double kHalf = 0.5;

class Margin {
 public:
  Margin(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    if (ask_.has("layer") == ask_.has("mark")) {
      ask_.fail("layer", ask_.has("layer") ? "cannot stand beside mark" : "is missing, and so is mark");
      return;
    }
    const auto layer = ask_.has("layer") ? std::optional(ask_.amount("layer", Unit::micrometre, kLayer)) : of_mark();
    if (ask_.failed() || !layer) return;
    const Grade grade = read_grade();
    if (ask_.failed()) return;
    answer_.beware(ask_.caution("gold-margin thin"));
    answer_.formula("margin = layer / median grain", "usage of the bench: a stroke can cut half a layer of its grain's size",
                    model::Trust::memory);
    const Amount margin = *layer / grade.median;
    answer_.put("layer", *layer, Unit::micrometre);
    answer_.put("grain", grade.median, Unit::micrometre);
    Output& output = answer_.put("margin", margin, Unit::one);
    output.printed += " grains deep";
    const bool bare = grade.median.nominal > layer->low * kHalf;
    answer_.decide("verdict", bare ? Code::does_not_stand : Code::stands,
                   bare ? "one stroke may expose base metal: no abrasive, soap and water only"
                        : "the layer is deeper than two grains, and still no stroke is free: soap and water first",
                   margin);
    answer_.step(grade.name + (ask_.has("scale") ? ", the finest of its scale" : "") + ": median " +
                 shown(grade.median, Unit::micrometre));
    if (ask_.has("fineness")) fine_gold(*layer);
    if (ask_.failed()) return;
    answer_.holds("The layer as new. Wear takes the edges first: an edge that shows another colour has none left.");
    answer_.nominal_only(*layer, "the layer");
  }

 private:
  /// The grade that is named, or the finest of a scale.
  Grade read_grade() {
    if (ask_.has("grade") == ask_.has("scale")) {
      ask_.fail("grade", ask_.has("grade") ? "cannot stand beside scale" : "is missing, and so is scale");
      return {};
    }
    if (ask_.has("grade")) return grade_named(ask_, "grade", ask_.text("grade")).value_or(Grade{});
    const std::vector<Grade> grades = grades_of_scale(ask_, "scale", ask_.text("scale"));
    return grades.empty() ? Grade{} : grades.back();
  }

  /// A figure in micrometres as it stands, `GP 20` with the figure of the Swiss rules, else a whole mark of the table by its
  /// rule and year.
  std::optional<Amount> of_mark() {
    const std::string whole = base::lower_ascii(ask_.text("mark"));
    for (const auto& key : ask_.row_keys("plating-marks")) {
      if (ask_.row_if_any("plating-marks", key, "layer", Unit::micrometre) && is_mark(key, whole)) return of_table(whole);
    }
    const GoldMark mark = read_gold_mark(whole);
    if (mark.letters.empty() && !mark.micrometres) {
      ask_.fail("mark", "is empty");
      return std::nullopt;
    }
    if (!mark.karat.empty())
      answer_.holds(mark.karat + " is the fineness of the gold and says nothing about the thickness of the layer.");
    if (mark.by_weight)
      answer_.holds("A share by weight says nothing about the layer by itself: the least layer of the rule counts.");
    const bool swiss = mark.letters == "gr" || mark.letters == "gp";
    if (mark.micrometres && (swiss || mark.has_unit)) return of_figure(*mark.micrometres, swiss);
    if (mark.micrometres) {
      ask_.fail("mark", "the figure behind these letters has no unit, and no rule here says which it is");
      return std::nullopt;
    }
    return of_table(mark.letters);
  }

  /// The figure is the layer; the Swiss rules let it be a fifth less, and so is every other that stands on a case.
  std::optional<Amount> of_figure(double value, bool swiss) {
    if (value < kLayer.least || value > kLayer.most) {
      ask_.fail("mark", "the figure is no layer in micrometres");
      return std::nullopt;
    }
    const Amount least = ask_.row("bench-rules", "gold-figure-least", "value", Unit::one);
    if (ask_.failed()) return std::nullopt;
    Amount layer = over<2>({exactly(value), least}, [](const auto& p) { return p[0] * p[1]; });
    layer.nominal = layer.high = value;
    layer.low = base::tidy(value * least.nominal);
    layer.has_ends = true;
    layer.trust = swiss ? least.trust : model::Trust::memory;
    answer_.step(
        swiss ? "the figure is the layer, less at most a fifth, by the Swiss ordinance SR 941.311, articles 43 and 49"
              : "the figure is read as it stands, less a fifth as the Swiss ordinance allows; no rule of this mark is known");
    return layer;
  }

  /// Whether the rule of a mark can have held in a year; an end that is not stated leaves that side open.
  bool held_in(const std::string& key, double year) const {
    const auto from = base::parse_decimal(ask_.row_word("plating-marks", key, "from"));
    const auto until = base::parse_decimal(ask_.row_word("plating-marks", key, "until"));
    return (!from || *from <= year) && (!until || year <= *until);
  }

  /// Whether a row is of this mark: its whole name, or one of the stamps beside it.
  bool is_mark(const std::string& key, const std::string& mark) const {
    if (base::lower_ascii(key) == mark) return true;
    std::string rest = base::lower_ascii(ask_.row_word("plating-marks", key, "stamps"));
    if (rest == "none") return false;
    while (!rest.empty()) {
      const std::size_t bar = std::min(rest.find('|'), rest.size());
      if (rest.substr(0, bar) == mark) return true;
      rest = rest.substr(std::min(bar + 1, rest.size()));
    }
    return false;
  }

  std::optional<Amount> of_table(const std::string& mark) {
    std::vector<Amount> layers;
    std::vector<std::string> known;
    bool is_known = false;
    const Amount year = ask_.has("year") ? ask_.amount("year", Unit::one, kYear) : exactly(0);
    for (const auto& key : ask_.row_keys("plating-marks")) {
      const auto layer = ask_.row_if_any("plating-marks", key, "layer", Unit::micrometre);
      if (layer) known.push_back(key);
      if (!layer || !is_mark(key, mark)) continue;
      is_known = true;
      if (ask_.has("year") && !held_in(key, year.nominal)) continue;
      layers.push_back(*layer);
      answer_.step(key + ": " + shown(*layer, Unit::micrometre) + ", " + ask_.row_word("plating-marks", key, "rule"));
    }
    if (ask_.failed()) return std::nullopt;
    if (is_known && layers.empty()) {
      ask_.fail("year", "lies outside the years of every rule that knows this mark");
      return std::nullopt;
    }
    if (layers.empty()) {
      const bool figure = mark == "gr" || mark == "gp";
      ask_.fail(
          "mark", figure ? "says nothing without its figure" : "no rule here says what it stands for",
          figure ? "write it with the figure, like GP 20" : "known: " + base::or_list(known) + ", or GP 20 with its figure");
      return std::nullopt;
    }
    if (!ask_.has("year")) {
      answer_.lacks("year");
      answer_.caution("", "Without the year nobody knows whether the rule held: an older or a foreign case may carry less.");
    }
    if (ask_.has("year"))
      answer_.step("year " + base::fixed_text(year.nominal, 0) + ": of the rules that can have held then, the thinnest counts");
    Amount layer = detail::resting_on(layers);
    layer.nominal = layer.low = layer.high = layers.front().nominal;
    for (const auto& one : layers) {
      detail::widen(layer, one.nominal);
      layer.nominal = std::min(layer.nominal, one.nominal);
    }
    layer.has_ends = layer.low < layer.high;
    return layer;
  }

  /// Parts in a thousand; `14K` and `18 ct` by the table.
  std::string read_fineness() {
    const std::string text = base::lower_ascii(base::without_spaces(ask_.text("fineness")));
    for (const auto& key : ask_.row_keys("gold-alloys")) {
      const std::string karat = ask_.row_word("gold-alloys", key, "karat");
      for (const char* const end : {"k", "kt", "ct", "c", "karat", "carat"}) {
        if (!karat.empty() && text == karat + end) return key;
      }
    }
    const Amount fineness = ask_.amount("fineness", Unit::one, kFineness);
    if (fineness.has_ends) ask_.fail("fineness", "is one figure, not a range");
    return base::fixed_text(fineness.nominal, 0);
  }

  void fine_gold(const Amount& layer) {
    const std::string key = read_fineness();
    if (ask_.failed()) return;
    const Amount fineness = exactly(base::parse_decimal(key).value_or(0));
    const auto alloy = ask_.row_if_any("gold-alloys", key, "density", Unit::gram_per_cubic_centimetre);
    const Amount fine = ask_.row("gold-alloys", "1000", "density", Unit::gram_per_cubic_centimetre);
    if (!alloy)
      ask_.fail("fineness", "the density of that alloy is not known", "known: " + base::or_list(ask_.row_keys("gold-alloys")));
    if (ask_.failed()) return;
    answer_.formula("fine gold = layer x fineness x density / 19.3", "mass balance; ISO 10713:1992 prints equivalents",
                    model::Trust::memory);
    answer_.put("fine-gold", layer * fineness / exactly(1000) * *alloy / fine, Unit::micrometre);
  }

  Ask& ask_;
  Answer& answer_;
};

Result gold_margin(const Inputs& inputs, const Context& context) {
  return calculate<Margin>(gold_margin_calculator(), inputs, context);
}

}  // namespace

Calculator gold_margin_calculator() {
  return {kName,
          "whether a gold layer stands an abrasive",
          {{"layer", "of gold", "20 µm", false},
           {"mark", "on the case, instead of a layer: GP 20, 20 microns, GF, RGP", "GP 20", false},
           {"year", "of the case, for a mark without a figure", "1955", false},
           {"grade", "of the abrasive", "P2500", false},
           {"scale", "instead of a grade: its finest is reckoned", "P", false},
           {"fineness", "of the gold, in a thousand or in karat, for its fine gold", "585", false}},
          gold_margin,
          {{"layer", "layer", 2, base::Rounding::down},
           {"grain", "grain", 1},
           {"margin", "margin", 2, base::Rounding::down},
           {"verdict", "verdict"},
           {"fine-gold", "as fine gold", 3, base::Rounding::down}},
          "layer or mark; and grade or scale"};
}

}  // namespace benchleaf::bench
