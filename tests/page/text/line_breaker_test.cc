// The line breaker against every set of breaks there is. The formulas are written out here from Knuth and Plass,
// "Breaking Paragraphs into Lines", Software: Practice and Experience 11 (1981), sections "Desirability criteria" and
// "The algorithm itself": adjustment ratio r, badness 100 |r|^3, demerits, flagged penalties, fitness classes. The extra
// for a short last line is ours.
#include "page/text/line_breaker.h"

#include <cmath>
#include <limits>
#include <random>

#include "support/catch.h"

using namespace benchleaf::page;

namespace {

/// Numbers that are the same with every library: std::uniform_int_distribution is not.
class Dice {
 public:
  explicit Dice(std::uint32_t seed) : engine_(seed) {}
  int roll(int low, int high) { return low + static_cast<int>(engine_() % static_cast<std::uint32_t>(high - low + 1)); }

 private:
  std::mt19937 engine_;
};

BreakItem box(Length width) {
  BreakItem item;
  item.width = width;
  return item;
}
BreakItem glue(Length width, Length stretch, Length shrink) {
  BreakItem item;
  item.kind = BreakItem::Kind::glue;
  item.width = width;
  item.stretch = stretch;
  item.shrink = shrink;
  return item;
}
BreakItem penalty(int cost, Length width, bool flagged) {
  BreakItem item;
  item.kind = BreakItem::Kind::penalty;
  item.penalty = cost;
  item.width = width;
  item.flagged = flagged;
  return item;
}

void finish(std::vector<BreakItem>& items) {
  items.push_back(penalty(kNoBreak, 0, false));
  items.push_back(glue(0, 0, 0));
  items.back().fill = true;
  items.push_back(penalty(kForcedBreak, 0, true));
}

std::vector<BreakItem> random_paragraph(Dice& dice, bool hyphens) {
  std::vector<BreakItem> items;
  const int words = dice.roll(6, hyphens ? 12 : 18);
  int points = 0;
  for (int word = 0; word < words; ++word) {
    if (word > 0) items.push_back(glue(3000, 1500, 1000));
    items.push_back(box(dice.roll(4, 22) * 1000));
    while (hyphens && points < 8 && dice.roll(0, 2) == 0) {
      ++points;
      items.push_back(penalty(dice.roll(0, 4) == 0 ? -20 : 50, dice.roll(0, 4) * 1000, dice.roll(0, 3) > 0));
      items.back().after = dice.roll(-300, 300);
      items.push_back(box(dice.roll(4, 16) * 1000));
    }
  }
  finish(items);
  return items;
}

/// Tries all sets of breaks, one line at a time; a set with a line that is not feasible is no set.
class AllSets {
 public:
  AllSets(const std::vector<BreakItem>& items, const BreakOptions& options) : items_(items), options_(options) {}

  double least() {
    go(0, 0, 0, 1, false, 0.0);
    return least_;
  }
  long sets() const { return sets_; }

 private:
  static bool is_box(const BreakItem& b) { return b.kind == BreakItem::Kind::box; }
  static bool is_penalty(const BreakItem& b) { return b.kind == BreakItem::Kind::penalty; }

  bool legal(std::size_t b) const {
    if (is_penalty(items_[b])) return items_[b].penalty < kNoBreak;
    return items_[b].kind == BreakItem::Kind::glue && b > 0 && is_box(items_[b - 1]);
  }

  double length(std::size_t a, std::size_t b, Length after) const {
    double sum = static_cast<double>(after);
    for (std::size_t i = a; i < b; ++i) sum += is_penalty(items_[i]) ? 0 : static_cast<double>(items_[i].width);
    return is_penalty(items_[b]) ? sum + static_cast<double>(items_[b].width) : sum;
  }

  /// r of the line that holds items `a` up to the break `b`.
  double ratio(std::size_t a, std::size_t b, Length after, std::size_t line) const {
    const double natural = length(a, b, after);
    double stretch = static_cast<double>(options_.end_stretch);
    double shrink = 0;
    bool fill = false;
    for (std::size_t i = a; i < b; ++i) {
      if (is_penalty(items_[i])) continue;
      stretch += static_cast<double>(items_[i].stretch);
      shrink += static_cast<double>(items_[i].shrink);
      fill = fill || items_[i].fill;
    }
    const double want = static_cast<double>(line < options_.first_widths.size() ? options_.first_widths[line] : options_.width);
    const double huge = std::numeric_limits<double>::infinity();
    if (natural < want) {
      if (fill) return 0;  // infinite stretch
      return stretch > 0 ? (want - natural) / stretch : huge;
    }
    if (natural > want) return shrink > 0 ? (want - natural) / shrink : -huge;
    return 0;
  }

  static int fitness(double r) { return r < -0.5 ? 0 : r <= 0.5 ? 1 : r <= 1 ? 2 : 3; }

  void go(std::size_t from, Length after, std::size_t line, int last_class, bool last_flag, double total) {
    std::size_t a = from;
    while (!is_box(items_[a]) && !(is_penalty(items_[a]) && items_[a].penalty == kForcedBreak)) ++a;
    for (std::size_t b = a; b < items_.size(); ++b) {
      if (!legal(b)) continue;
      const BreakItem& at = items_[b];
      const bool forced = is_penalty(at) && at.penalty == kForcedBreak;
      const double r = ratio(a, b, after, line);
      if (r >= -1 && r <= options_.tolerance) {
        const double badness = 100 * std::pow(std::fabs(r), 3);
        const double p = is_penalty(at) ? at.penalty : 0;
        double demerits = std::pow(1 + badness + p, 2);
        if (p < 0) demerits = std::pow(1 + badness, 2) - (forced ? 0 : p * p);
        const bool flag = is_penalty(at) && at.flagged;
        if (flag && last_flag) demerits += options_.flagged_demerits;
        if (std::abs(fitness(r) - last_class) > 1) demerits += options_.fitness_demerits;
        if (b + 1 == items_.size()) {
          ++sets_;
          if (length(a, b, after) < static_cast<double>(options_.short_last)) demerits += options_.short_last_demerits;
          least_ = std::min(least_, total + demerits);
        } else {
          go(b + 1, is_penalty(at) ? at.after : 0, line + 1, fitness(r), flag, total + demerits);
        }
      }
      if (forced) return;
    }
  }

  const std::vector<BreakItem>& items_;
  const BreakOptions& options_;
  double least_ = std::numeric_limits<double>::infinity();
  long sets_ = 0;
};

struct Tally {
  int feasible = 0;
  int several = 0;
};

void compare(const std::vector<BreakItem>& items, const BreakOptions& options, Tally& tally) {
  AllSets all(items, options);
  const double least = all.least();
  const auto found = break_lines(items, options);
  REQUIRE(found.has_value() == std::isfinite(least));
  if (!found) return;
  ++tally.feasible;
  if (all.sets() > 1) ++tally.several;
  CHECK(found->demerits == Approx(least).epsilon(1e-9));
}

}  // namespace

TEST_CASE("least demerits of 300 random justified paragraphs, against all sets of breaks") {
  Dice dice(1981);
  Tally tally;
  for (int i = 0; i < 300; ++i) {
    BreakOptions options;
    options.width = dice.roll(50, 110) * 1000;
    options.tolerance = dice.roll(1, 8);
    if (i % 3 == 0) options.first_widths = {options.width - 20000, options.width - 10000};
    if (i % 2 == 0) options.short_last = options.width / 3;
    compare(random_paragraph(dice, false), options, tally);
  }
  // the comparison means nothing if hardly any paragraph has a choice
  CHECK(tally.feasible > 150);
  CHECK(tally.several > 100);
}

TEST_CASE("least demerits of 300 random paragraphs with hyphens, against all sets of breaks") {
  Dice dice(1119);
  Tally tally;
  for (int i = 0; i < 300; ++i) {
    BreakOptions options;
    options.width = dice.roll(45, 100) * 1000;
    options.tolerance = dice.roll(1, 8);
    if (i % 3 == 0) options.first_widths = {options.width - 15000};
    compare(random_paragraph(dice, true), options, tally);
  }
  CHECK(tally.feasible > 150);
  CHECK(tally.several > 100);
}

TEST_CASE("least demerits of 300 random ragged paragraphs, against all sets of breaks") {
  Dice dice(1184);
  Tally tally;
  for (int i = 0; i < 300; ++i) {
    BreakOptions options;
    options.width = dice.roll(60, 150) * 1000;
    options.tolerance = 1 + 0.5 * dice.roll(0, 2);
    options.end_stretch = 18000;
    options.fitness_demerits = i % 2 == 0 ? 0 : 3000;
    std::vector<BreakItem> items = random_paragraph(dice, i % 2 == 0);
    for (BreakItem& item : items) item.stretch = item.shrink = 0;
    compare(items, options, tally);
  }
  CHECK(tally.feasible > 150);
  CHECK(tally.several > 100);
}

TEST_CASE("forced breaks inside a paragraph are taken, an empty line between them too") {
  std::vector<BreakItem> items = {box(10000)};
  finish(items);
  items.push_back(box(0));
  finish(items);
  items.push_back(box(20000));
  finish(items);
  BreakOptions options;
  options.width = 100000;
  const auto breaks = break_lines(items, options);
  REQUIRE(breaks);
  REQUIRE(breaks->lines.size() == 3);
  CHECK(breaks->lines[0].end == 3);
  CHECK(breaks->lines[1].end == 7);
  CHECK(breaks->lines[2].end == 11);
}

TEST_CASE("no set of breaks within the tolerance: nothing, and in an emergency the best there is") {
  std::vector<BreakItem> items = {box(30000), glue(3000, 1500, 1000), box(90000), glue(3000, 1500, 1000), box(30000)};
  finish(items);
  BreakOptions options;
  options.width = 50000;
  CHECK_FALSE(break_lines(items, options));
  options.emergency = true;
  const auto breaks = break_lines(items, options);
  REQUIRE(breaks);
  REQUIRE(breaks->lines.size() == 3);
  CHECK(breaks->lines[0].ratio > 0);
  CHECK(breaks->lines[1].ratio < -1);  // the box of 90 on a line of 50
  CHECK(breaks->lines[2].ratio >= -1);
}

TEST_CASE("items without a forced break at their end have no lines") {
  CHECK_FALSE(break_lines({}, {}));
  CHECK_FALSE(break_lines({box(1000)}, {}));
}
