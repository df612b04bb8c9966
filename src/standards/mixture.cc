// In: the classes and shares of ingredients, what was measured on the whole, and the tables of limits. Out: the classes of
// the mixture, and what no percentage decides.

#include "standards/mixture.h"

#include <algorithm>
#include <map>
#include <utility>

#include "base/number.h"
#include "base/quantity.h"
#include "standards/flammable.h"
#include "standards/mixture_limits.h"
#include "standards/table_view.h"

namespace benchleaf::standards {
namespace {

using Row = model::PublishedTable::Row;

std::string percent_text(double value) { return base::shortest_text(base::tidy(value)) + " %"; }

std::string degrees(double celsius) {
  return base::shortest_text(celsius) +
         " \xC2\xB0"
         "C";
}

/// A figure of the table mixture-figures; 0 where the table is missing, which the read stage has told.
double figure_of(const model::Tables& tables, const char* name, base::Unit unit) {
  const Row* row = row_of(tables, "mixture-figures", name);
  return row == nullptr ? 0 : cell_value(*row, "value", unit).value_or(0);
}

/// Adds up one mixture.
class Classifier {
 public:
  Classifier(const Mixture& mixture, const model::Tables& tables)
      : mixture_(mixture), tables_(tables), lowest_cut_off_(figure("lowest-cut-off", base::Unit::percent_by_mass)) {}

  Classification run() {
    if (is_pure()) {
      add_own();
    } else {
      add_sums();
    }
    add_flammable();
    add_extreme_ph();
    drop_weaker();
    return std::move(result_);
  }

 private:
  void add_sums() {
    for (const auto& rule : generic_rules(tables_)) add_up(rule);
    add_single();
    add_acute();
    add_oxidising();
    add_supplementary();
    add_not_additive();
    add_uncovered();
  }

  /// What a substance alone carries; that it burns is for its flash point to say where one is given.
  void add_own() {
    constexpr double kWhole = 100;
    for (const auto& line : mixture_.parts.front().hazards) {
      const bool weaker = line.below && *line.below <= kWhole;
      if (weaker || begins_with(line.hazard_class, "Flam. Liq.")) continue;
      found(line.hazard_class, line.statement, "its own class");
    }
  }

  void found(std::string hazard_class, std::string statement, std::string why, bool sure = true) {
    result_.classes.push_back({std::move(hazard_class), std::move(statement), std::move(why), sure});
  }

  void open(OpenQuestion question, std::string words) { result_.undecided.push_back({question, std::move(words)}); }

  /// A cell that was looked at, whether or not it decided: `none` rests on the limits that were not reached.
  static void use(const char* table, const Row* row, const char* column, std::vector<LimitUsed>& list) {
    if (row == nullptr) return;
    const std::string fact = std::string("table/") + table + "#" + row->key + "." + column;
    const auto same = [&fact](const LimitUsed& one) { return one.fact == fact; };
    if (std::none_of(list.begin(), list.end(), same)) list.push_back({fact, row->trust});
  }

  void add_up(const LimitRule& rule) {
    double sum = 0;
    std::string why;
    for (const auto& part : mixture_.parts) {
      const auto limit = limit_of(part, rule);
      const double factor = factor_of(part, rule);
      if (limit) use("generic-limits", limit->row, "limit", result_.limits);
      if (!limit || limit->limit <= 0 || base::tidy(part.percent * factor) < limit->cut_off) continue;
      sum += part.percent * factor / limit->limit;
      why +=
          (why.empty() ? "" : " + ") + part.name + " " + percent_text(part.percent * factor) + " / " + percent_text(limit->limit);
    }
    if (base::tidy(sum) < 1) return;
    if (rule.gives == "Asp. Tox. 1") {
      found(rule.gives, rule.statement, why, false);
      open(OpenQuestion::viscosity,
           "H304 holds where the viscosity at 40 \xC2\xB0"
           "C is " +
               figure_text("aspiration-viscosity") + " or less");
      use_figure("aspiration-viscosity", result_.open_limits);
      return;
    }
    found(rule.gives == "Skin Corr. 1" ? corrosive_class() : rule.gives, rule.statement, why + " = " + base::fixed_text(sum, 2));
  }

  /// Classes that are not added up: one part alone at its limit gives the class to the whole.
  void add_single() {
    for (const auto& part : mixture_.parts) {
      for (const auto& line : part.hazards) {
        for (const auto& row : rows_of(tables_, "single-limits")) {
          const std::string& gives = cell_text(row, "gives");
          const bool own = gives == line.hazard_class;
          const double limit = own && line.from ? *line.from : percent_of(row, "limit");
          if (cell_text(row, "counts") != line.hazard_class || limit <= 0) continue;
          if (!own || !line.from) use("single-limits", &row, "limit", result_.limits);
          if (part.percent < limit) continue;
          const std::string& statement = cell_text(row, "statement");
          found(gives, statement == "own" ? line.statement : statement,
                part.name + " " + percent_text(part.percent) + ", limit " + percent_text(limit));
        }
      }
    }
  }

  /// The limit of a corrosive part that has none of its own.
  double generic_corrosive() const {
    const Row* row = row_of(tables_, "generic-limits", "skin-corr-by-corrosive");
    return row == nullptr ? 0 : percent_of(*row, "limit");
  }

  /// The strongest sub-category whose members alone, with those above them, come up to their limits.
  std::string corrosive_class() const {
    const double generic = generic_corrosive();
    const std::string base_class = "Skin Corr. 1";
    for (const char letter : {'A', 'B', 'C'}) {
      double sum = 0;
      for (const auto& part : mixture_.parts) {
        std::optional<double> limit;
        for (const auto& line : part.hazards) {
          const bool member = line.hazard_class.size() == base_class.size() + 1 && begins_with(line.hazard_class, base_class) &&
                              line.hazard_class.back() <= letter;
          if (member) limit = std::min(limit.value_or(line.from.value_or(generic)), line.from.value_or(generic));
        }
        if (limit) sum += part.percent / *limit;
      }
      if (base::tidy(sum) >= 1) return base_class + letter;
    }
    return base_class;
  }

  /// The category that a route's estimate falls into, or nothing: 100 through the sum of shares through points.
  const Row* acute_row(std::string_view route) {
    std::vector<const Row*> rows;
    for (const auto& row : rows_of(tables_, "acute-toxicity-limits")) {
      if (cell_text(row, "route") == route) rows.push_back(&row);
    }
    double sum = 0;
    for (const auto& part : mixture_.parts) {
      double strongest = 0;
      for (const Row* row : rows) {
        const std::string& category = cell_text(*row, "category");
        const double cut_off = category == "4" ? figure("acute-4-cut-off", base::Unit::percent_by_mass) : lowest_cut_off_;
        const auto point = base::parse_decimal(cell_text(*row, "point"));
        if (!point || part.percent < cut_off || !has_class(part, "Acute Tox. " + category, cell_text(*row, "statement")))
          continue;
        use("acute-toxicity-limits", row, "point", result_.limits);
        use_figure(category == "4" ? "acute-4-cut-off" : "lowest-cut-off", result_.limits);
        strongest = std::max(strongest, part.percent / *point);
      }
      sum += strongest;
    }
    if (sum <= 0) return nullptr;
    for (const Row* row : rows) {
      const auto up_to = base::parse_decimal(cell_text(*row, "up-to"));
      use("acute-toxicity-limits", row, "up-to", result_.limits);
      if (up_to && base::tidy(100 / sum) <= *up_to) return row;
    }
    return nullptr;
  }

  void add_acute(const Row* row, bool sure) {
    if (row == nullptr) return;
    const std::string route = cell_text(*row, "route");
    found("Acute Tox. " + cell_text(*row, "category"), cell_text(*row, "statement"), "estimate for " + route, sure);
  }

  void add_acute() {
    add_acute(acute_row("oral"), true);
    add_acute(acute_row("dermal"), true);
    const Row* vapour = acute_row("vapour");
    const Row* mist = acute_row("mist");
    const bool agree = vapour != nullptr && mist != nullptr && cell_text(*vapour, "category") == cell_text(*mist, "category");
    add_acute(mist != nullptr ? mist : vapour, agree);
    if ((vapour != nullptr || mist != nullptr) && !agree) {
      open(OpenQuestion::breathed, "harm by inhaling depends on whether vapour or mist is breathed");
    }
  }

  /// One substance and nothing else: what it carries itself needs no measuring.
  bool is_pure() const {
    constexpr double kWhole = 100;
    return mixture_.parts.size() == 1 && mixture_.parts.front().percent >= kWhole;
  }

  void add_flammable() {
    const bool burns = std::any_of(mixture_.parts.begin(), mixture_.parts.end(), [](const MixturePart& part) {
      return std::any_of(part.hazards.begin(), part.hazards.end(),
                         [](const HazardLine& line) { return begins_with(line.hazard_class, "Flam. Liq."); });
    });
    if (mixture_.no_flash_point) return;
    if (!mixture_.flash_point && is_pure()) {
      for (const auto& line : mixture_.parts.front().hazards) {
        if (begins_with(line.hazard_class, "Flam. Liq.")) found(line.hazard_class, line.statement, "its own class");
      }
      return;
    }
    if (!mixture_.flash_point) {
      if (burns) open(OpenQuestion::flash_point, "whether it burns follows from its flash point, not from a percentage");
      return;
    }
    const Row* category = flammable_category(tables_, *mixture_.flash_point, mixture_.boiling);
    for (const auto& row : rows_of(tables_, "flammable-categories"))
      use("flammable-categories", &row, "flash-below", result_.limits);
    if (category == nullptr) return;
    found(category->key, cell_text(*category, "statement"), "flash point " + degrees(*mixture_.flash_point));
    if (!depends_on_boiling(*category) || mixture_.boiling) return;
    const double limit = cell_value(*category, "boiling-limit", base::Unit::degree_celsius).value_or(0);
    open(OpenQuestion::boiling_point, "no boiling point is given: it is taken to be above " + degrees(limit));
  }

  void add_oxidising() {
    for (const auto& part : mixture_.parts) {
      for (const auto& line : part.hazards) {
        if (!begins_with(line.hazard_class, "Ox. Liq.")) continue;
        const bool within = part.percent >= line.from.value_or(lowest_cut_off_) && (!line.below || part.percent < *line.below);
        if (!line.from) use_figure("lowest-cut-off", result_.limits);
        if (!within) continue;
        found(line.hazard_class, line.statement, part.name + " " + percent_text(part.percent), false);
        open(OpenQuestion::oxidising, "how strongly " + part.name + " feeds a fire is a matter of test");
      }
    }
  }

  void add_supplementary() {
    const double cut_off = figure("supplementary-cut-off", base::Unit::percent_by_mass);
    for (const auto& part : mixture_.parts) {
      for (const auto& line : part.hazards) {
        if (!begins_with(line.statement, "EUH")) continue;
        if (!line.from) use_figure("supplementary-cut-off", result_.limits);
        if (part.percent < line.from.value_or(cut_off)) continue;
        found(line.hazard_class, line.statement, part.name + " " + percent_text(part.percent), line.from.has_value());
        if (!line.from) open(OpenQuestion::supplier, line.statement + " of " + part.name + " has no limit: its supplier decides");
      }
    }
  }

  void add_extreme_ph() {
    const double acid_end = figure("extreme-acid", base::Unit::one), base_end = figure("extreme-base", base::Unit::one);
    const std::string acid_words = extreme_ph_words(OpenQuestion::extreme_acid, tables_);
    const std::string base_words = extreme_ph_words(OpenQuestion::extreme_base, tables_);
    const bool acid = mixture_.ph_low && *mixture_.ph_low <= acid_end;
    const bool alkaline = mixture_.ph_high && *mixture_.ph_high >= base_end;
    const bool corrosive = std::any_of(mixture_.parts.begin(), mixture_.parts.end(), [](const MixturePart& part) {
      return has_class(part, "Skin Corr. 1", {}) && part.percent > 0;
    });
    for (const char* end : {"extreme-acid", "extreme-base"}) {
      if (mixture_.ph_low || corrosive) use_figure(end, result_.open_limits);
    }
    if (!mixture_.ph_low && corrosive && !has("Skin Corr. 1", true)) {
      open(OpenQuestion::ph_not_given,
           "no pH is given: at " + acid_words + ", and at " + base_words + ", it counts as corrosive whatever the sum says");
    }
    if (acid || alkaline) {
      open(acid ? OpenQuestion::extreme_acid : OpenQuestion::extreme_base,
           "the pH is " + (acid ? acid_words : base_words) +
               ": corrosive, unless its reserve of acid or alkali, or a test, says otherwise");
    }
  }

  /// A corrosive acid or base without a limit of its own: that its harm adds up is for somebody who knows it to say.
  void add_not_additive() {
    if (has("Skin Corr. 1", true)) return;
    const double from = figure("not-additive-corrosive", base::Unit::percent_by_mass);
    for (const auto& part : mixture_.parts) {
      const bool own = std::any_of(part.hazards.begin(), part.hazards.end(), [](const HazardLine& line) {
        return family_of(line.hazard_class) == "Skin Corr. 1" && line.from;
      });
      if (!part.acid_or_base || own || !has_class(part, "Skin Corr. 1", {})) continue;
      use_figure("not-additive-corrosive", result_.limits);
      if (part.percent < from || from <= 0) continue;
      found("Skin Corr. 1", "H314", part.name + " " + percent_text(part.percent) + ", an acid or base", false);
      open(OpenQuestion::additivity, part.name + " is a corrosive acid or base: from " + percent_text(from) +
                                         " of it the whole may be as corrosive, whatever the sum says");
    }
  }

  /// Classes for which no rule of addition is kept here.
  void add_uncovered() {
    for (const auto& part : mixture_.parts) {
      for (const auto& line : part.hazards) {
        const bool covered = begins_with(line.statement, "EUH") || begins_with(line.hazard_class, "Ox. Liq.") ||
                             begins_with(line.hazard_class, "Flam. Liq.") || begins_with(line.hazard_class, "Acute Tox.");
        if (covered || part.percent < lowest_cut_off_ || counted(line)) continue;
        use_figure("lowest-cut-off", result_.open_limits);
        open(OpenQuestion::not_added_up, line.hazard_class + " " + line.statement + " of " + part.name + " is not added up here");
      }
    }
  }

  bool counted(const HazardLine& line) const {
    const std::string family = family_of(line.hazard_class);
    const auto& single = rows_of(tables_, "single-limits");
    if (std::any_of(single.begin(), single.end(), [&](const Row& row) { return cell_text(row, "counts") == line.hazard_class; }))
      return true;
    const auto& rows = rows_of(tables_, "generic-limits");
    return std::any_of(rows.begin(), rows.end(), [&](const Row& row) { return cell_text(row, "counts") == family; });
  }

  bool has(std::string_view family, bool only_sure) const {
    return std::any_of(result_.classes.begin(), result_.classes.end(),
                       [&](const FoundClass& one) { return family_of(one.hazard_class) == family && (one.sure || !only_sure); });
  }

  void drop_weaker() {
    static const std::multimap<std::string, std::string> kCoveredBy = {{"Skin Irrit. 2", "Skin Corr. 1"},
                                                                       {"Eye Dam. 1", "Skin Corr. 1"},
                                                                       {"Eye Irrit. 2", "Skin Corr. 1"},
                                                                       {"Eye Irrit. 2", "Eye Dam. 1"},
                                                                       {"Aquatic Chronic 2", "Aquatic Chronic 1"},
                                                                       {"Aquatic Chronic 3", "Aquatic Chronic 1"},
                                                                       {"Aquatic Chronic 3", "Aquatic Chronic 2"},
                                                                       {"Aquatic Chronic 4", "Aquatic Chronic 1"},
                                                                       {"Aquatic Chronic 4", "Aquatic Chronic 2"},
                                                                       {"Aquatic Chronic 4", "Aquatic Chronic 3"},
                                                                       {"STOT RE 2", "STOT RE 1"},
                                                                       {"STOT SE 2", "STOT SE 1"},
                                                                       {"Repr. 2", "Repr. 1B"},
                                                                       {"Repr. 2", "Repr. 1A"},
                                                                       {"Carc. 2", "Carc. 1B"},
                                                                       {"Carc. 2", "Carc. 1A"},
                                                                       {"Muta. 2", "Muta. 1B"},
                                                                       {"Muta. 2", "Muta. 1A"}};
    auto& classes = result_.classes;
    const auto covered = [this](const FoundClass& one) {
      const auto [first, last] = kCoveredBy.equal_range(one.hazard_class);
      return std::any_of(first, last, [this](const auto& pair) { return has(pair.second, true); });
    };
    std::vector<FoundClass> kept;
    for (const auto& one : classes) {
      if (!covered(one)) kept.push_back(one);
    }
    classes = std::move(kept);
  }

  void use_figure(const char* name, std::vector<LimitUsed>& list) const {
    use("mixture-figures", row_of(tables_, "mixture-figures", name), "value", list);
  }

  double figure(const char* name, base::Unit unit) const { return figure_of(tables_, name, unit); }

  std::string figure_text(const char* name) const {
    const Row* row = row_of(tables_, "mixture-figures", name);
    return row == nullptr ? std::string() : cell_text(*row, "value");
  }

  const Mixture& mixture_;
  const model::Tables& tables_;
  double lowest_cut_off_;
  Classification result_;
};

}  // namespace

std::string_view question_word(OpenQuestion question) {
  switch (question) {
    case OpenQuestion::viscosity: return "viscosity";
    case OpenQuestion::breathed: return "vapour-or-mist";
    case OpenQuestion::flash_point: return "flash-point";
    case OpenQuestion::boiling_point: return "boiling-point";
    case OpenQuestion::oxidising: return "oxidising-test";
    case OpenQuestion::supplier: return "supplier-limit";
    case OpenQuestion::extreme_acid: return "acid-reserve";
    case OpenQuestion::extreme_base: return "alkali-reserve";
    case OpenQuestion::ph_not_given: return "ph";
    case OpenQuestion::additivity: return "additivity";
    case OpenQuestion::not_added_up: return "not-added-up";
  }
  return "not-added-up";
}

std::string extreme_ph_words(OpenQuestion end, const model::Tables& tables) {
  const bool acid = end == OpenQuestion::extreme_acid;
  return base::shortest_text(figure_of(tables, acid ? "extreme-acid" : "extreme-base", base::Unit::one)) +
         (acid ? " or less" : " or more");
}

Classification classify(const Mixture& mixture, const model::Tables& tables) { return Classifier(mixture, tables).run(); }

}  // namespace benchleaf::standards
