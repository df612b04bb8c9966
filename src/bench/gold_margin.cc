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
#include "bench/grades.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "gold-margin";
constexpr Plausible kLayer{0.01, 2000};  // micrometres
constexpr Plausible kYear{1850, 2100};
constexpr Plausible kFineness{300, 1000};
constexpr double kSwissLoss = 0.2;  // tolerance of the stated layer
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
    const std::vector<Grade> grades = read_grades();
    if (ask_.failed()) return;
    const Grade& grade = ask_.has("scale") ? finest(grades) : coarsest(grades);
    if (ask_.has("grade") && grades.size() > 1) {
      answer_.caution("", "The number names no scale: it can be " + scales_text(grades) +
                              ". The coarsest is reckoned. A letter P is printed on the back of European paper.");
    }
    answer_.warn("caution/thin-gold",
                 "One stroke goes through a thin layer, at edges and lugs first; what is gone does not come back.");
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
  std::vector<Grade> read_grades() {
    if (ask_.has("grade") == ask_.has("scale")) {
      ask_.fail("grade", ask_.has("grade") ? "cannot stand beside scale" : "is missing, and so is scale");
      return {};
    }
    return ask_.has("grade") ? grades_named(ask_, "grade", ask_.text("grade"))
                             : grades_of_scale(ask_, "scale", ask_.text("scale"));
  }

  /// `GP 20`, `GR10`: the figure is the layer in micrometres; else a mark of the table, by its rule and year.
  std::optional<Amount> of_mark() {
    const std::string mark = base::lower_ascii(ask_.text("mark"));
    if (mark.find_first_not_of(' ') == std::string::npos) {
      ask_.fail("mark", "is empty");
      return std::nullopt;
    }
    const std::size_t digits = mark.find_first_of("0123456789");
    const std::string letters =
        mark.substr(0, std::min(mark.find_last_not_of(' ', digits == 0 ? 0 : digits - 1) + 1, mark.size()));
    if (digits != std::string::npos && digits > 0 && (letters == "gr" || letters == "gp")) return of_swiss(mark.substr(digits));
    return of_table(mark);
  }

  std::optional<Amount> of_swiss(const std::string& figure) {
    const auto value = base::parse_decimal(figure);
    if (!value || *value < kLayer.least || *value > kLayer.most) {
      ask_.fail("mark", "the figure behind the letters is no layer in micrometres");
      return std::nullopt;
    }
    Amount layer = exactly(*value);
    layer.low = base::tidy(*value * (1 - kSwissLoss));
    layer.has_ends = true;
    layer.trust = model::Trust::handbook;
    answer_.step("the figure is the layer, less at most a fifth, by the Swiss ordinance SR 941.311, articles 43 and 49");
    return layer;
  }

  /// Whether the rule of a mark can have held in a year; an end that is not stated leaves that side open.
  bool held_in(const std::string& key, double year) const {
    const auto from = base::parse_decimal(ask_.row_word("plating-marks", key, "from"));
    const auto until = base::parse_decimal(ask_.row_word("plating-marks", key, "until"));
    return (!from || *from <= year) && (!until || year <= *until);
  }

  std::optional<Amount> of_table(const std::string& mark) {
    std::vector<Amount> layers;
    std::vector<std::string> known;
    bool is_known = false;
    const Amount year = ask_.has("year") ? ask_.amount("year", Unit::one, kYear) : exactly(0);
    for (const auto& key : ask_.row_keys("plating-marks")) {
      known.push_back(key);
      const std::string name = base::lower_ascii(key);
      const auto layer = ask_.row_if_any("plating-marks", key, "layer", Unit::micrometre);
      if (!layer || name.substr(0, mark.size()) != mark) continue;
      is_known = true;
      if (ask_.has("year") && !held_in(key, year.nominal)) continue;
      layers.push_back(*layer);
      answer_.step(key + ": " + shown(*layer, Unit::micrometre) + ", " + ask_.row_word("plating-marks", key, "rule"));
    }
    if (is_known && layers.empty()) {
      ask_.fail("year", "lies outside the years of every rule that knows this mark");
      return std::nullopt;
    }
    if (layers.empty()) {
      ask_.fail("mark", "no rule here says what it stands for", "known: " + base::or_list(known) + ", or GP 20 with its figure");
      return std::nullopt;
    }
    if (!ask_.has("year")) {
      ask_.fail("year", "is missing: a mark without the year of its rule says nothing about the layer");
      return std::nullopt;
    }
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

  void fine_gold(const Amount& layer) {
    const Amount fineness = ask_.amount("fineness", Unit::one, kFineness);
    if (ask_.failed()) return;
    const std::string key = base::fixed_text(fineness.nominal, 0);
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
           {"mark", "on the case, instead of a layer", "GP 20", false},
           {"year", "of the case, for a mark without a figure", "1955", false},
           {"grade", "of the abrasive", "P2500", false},
           {"scale", "instead of a grade: its finest is reckoned", "P", false},
           {"fineness", "of the gold, for its fine gold", "585", false}},
          gold_margin};
}

}  // namespace benchleaf::bench
