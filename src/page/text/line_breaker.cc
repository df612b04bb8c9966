// In: boxes, glue and penalties of one paragraph. Out: the set of breaks with the least total demerits.
//
// Knuth and Plass, "Breaking Paragraphs into Lines", Software: Practice and Experience 11 (1981), pp. 1119-1184: active
// nodes, one for each place, fitness class and, while lines differ in width, line number. A node leaves when what stands
// between it and the place at hand cannot be shrunk into the line.
#include "page/text/line_breaker.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace benchleaf::page {

namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

struct Sums {
  Length width = 0;
  Length stretch = 0;
  Length shrink = 0;
  int fills = 0;
};

void add(Sums& sums, const BreakItem& item) {
  if (item.kind == BreakItem::Kind::penalty) return;
  sums.width += item.width;
  sums.stretch += item.stretch;
  sums.shrink += item.shrink;
  sums.fills += item.fill ? 1 : 0;
}

struct Node {
  std::size_t at = 0;    ///< item at which the line before ends
  std::size_t line = 0;  ///< number of lines before
  int fitness = 1;
  bool flagged = false;
  Sums sums;  ///< before the first item of the line that begins here
  double demerits = 0;
  double ratio = 0;  ///< of the line that ends here
  int previous = -1;
};

int fitness_class(double ratio) {
  if (ratio < -0.5) return 0;
  if (ratio <= 0.5) return 1;
  return ratio <= 1 ? 2 : 3;
}

bool is_forced(const BreakItem& item) { return item.kind == BreakItem::Kind::penalty && item.penalty <= kForcedBreak; }

std::size_t skip_vanishing(const std::vector<BreakItem>& items, std::size_t from) {
  while (from < items.size() && items[from].kind != BreakItem::Kind::box && !is_forced(items[from])) ++from;
  return from;
}

class Breaker {
 public:
  Breaker(const std::vector<BreakItem>& items, const BreakOptions& options) : items_(items), options_(options) {
    Node first;
    first.sums = sums_behind(skip_vanishing(items, 0), 0);
    nodes_.push_back(first);
    active_.push_back(0);
  }

  std::optional<Breaks> run() {
    bool behind_box = false;
    for (std::size_t i = 0; i < items_.size(); ++i) {
      const BreakItem& item = items_[i];
      const bool legal =
          item.kind == BreakItem::Kind::penalty ? item.penalty < kNoBreak : item.kind == BreakItem::Kind::glue && behind_box;
      if (legal && !try_break(i)) return std::nullopt;
      behind_box = item.kind == BreakItem::Kind::box;
      add(sums_, item);
    }
    return trace();
  }

 private:
  struct Fit {
    double ratio = 0;
    bool overruns = false;  ///< even without what a break here would add: no later place can be better
    double overrun = 0;
    bool short_last = false;
  };

  Sums sums_behind(std::size_t start, std::size_t from) const {
    Sums sums = sums_;
    for (std::size_t i = from; i < start; ++i) add(sums, items_[i]);
    return sums;
  }

  Length line_width(std::size_t line) const {
    return line < options_.first_widths.size() ? options_.first_widths[line] : options_.width;
  }

  Fit fit(const Node& node, const BreakItem& item) const {
    const Length target = line_width(node.line);
    const Length bare = sums_.width - node.sums.width;
    const Length natural = bare + (item.kind == BreakItem::Kind::penalty ? item.width : 0);
    const Length shrink = sums_.shrink - node.sums.shrink;
    Length stretch = sums_.stretch - node.sums.stretch + options_.end_stretch;
    if (options_.emergency) stretch = std::max<Length>(stretch, 1);
    const double slack = static_cast<double>(target - natural);
    Fit result;
    result.overruns = bare - shrink > target;
    result.overrun = -slack;
    if (slack > 0) {
      result.short_last = sums_.fills > node.sums.fills && natural < options_.short_last;
      if (sums_.fills > node.sums.fills) return result;
      result.ratio = stretch > 0 ? slack / static_cast<double>(stretch) : kInfinity;
    } else if (slack < 0) {
      result.ratio = shrink > 0 ? slack / static_cast<double>(shrink) : -kInfinity;
    }
    return result;
  }

  double demerits(const Node& from, const BreakItem& item, const Fit& fit, int fitness) const {
    const double size = std::fabs(fit.ratio);
    const double line = 1 + 100 * size * size * size;
    const double penalty = item.kind == BreakItem::Kind::penalty ? item.penalty : 0;
    double result = line * line;
    if (penalty >= 0) {
      result = (line + penalty) * (line + penalty);
    } else if (penalty > kForcedBreak) {
      result = line * line - penalty * penalty;
    }
    if (from.flagged && item.kind == BreakItem::Kind::penalty && item.flagged) result += options_.flagged_demerits;
    if (std::abs(from.fitness - fitness) > 1) result += options_.fitness_demerits;
    if (fit.short_last) result += options_.short_last_demerits;
    return result;
  }

  /// Line numbers only matter while the lines still differ in width.
  std::size_t line_group(std::size_t line) const { return std::min(line, options_.first_widths.size()); }

  /// A line that is too wide costs nothing: all sets of breaks go through it.
  void offer(int from, std::size_t at, const Fit& fit, bool too_wide) {
    const BreakItem& item = items_[at];
    const Node& start = nodes_[static_cast<std::size_t>(from)];
    Node node;
    node.at = at;
    node.line = start.line + 1;
    node.fitness = fitness_class(fit.ratio);
    node.flagged = item.kind == BreakItem::Kind::penalty && item.flagged;
    node.ratio = fit.ratio;
    node.previous = from;
    node.demerits = start.demerits + (too_wide ? 0 : demerits(start, item, fit, node.fitness));
    for (Node& known : offers_) {
      if (known.fitness != node.fitness || line_group(known.line) != line_group(node.line)) continue;
      if (node.demerits < known.demerits) known = node;
      return;
    }
    offers_.push_back(node);
  }

  /// Whether a node is left after the place.
  bool try_break(std::size_t at) {
    offers_.clear();
    kept_.clear();
    int last = -1;
    Fit last_fit;
    for (const int index : active_) {
      const Fit here = fit(nodes_[static_cast<std::size_t>(index)], items_[at]);
      if (here.ratio >= -1 && (options_.emergency || here.ratio <= options_.tolerance)) {
        offer(index, at, here, false);
      }
      if (!here.overruns && !is_forced(items_[at])) {
        kept_.push_back(index);
      } else if (last < 0 || here.overrun < last_fit.overrun) {
        last = index;
        last_fit = here;
      }
    }
    if (offers_.empty() && kept_.empty() && options_.emergency) offer(last, at, last_fit, true);
    active_.swap(kept_);
    for (Node& node : offers_) {
      node.sums = sums_behind(skip_vanishing(items_, at + 1), at);
      if (items_[at].kind == BreakItem::Kind::penalty) node.sums.width -= items_[at].after;
      active_.push_back(static_cast<int>(nodes_.size()));
      nodes_.push_back(node);
    }
    return !active_.empty();
  }

  std::optional<Breaks> trace() const {
    int best = -1;
    for (const int index : active_) {
      const Node& node = nodes_[static_cast<std::size_t>(index)];
      if (node.at + 1 != items_.size()) continue;
      if (best < 0 || node.demerits < nodes_[static_cast<std::size_t>(best)].demerits) best = index;
    }
    if (best < 0) return std::nullopt;
    Breaks breaks;
    breaks.demerits = nodes_[static_cast<std::size_t>(best)].demerits;
    for (int index = best; index > 0; index = nodes_[static_cast<std::size_t>(index)].previous) {
      const Node& node = nodes_[static_cast<std::size_t>(index)];
      breaks.lines.push_back({node.at, node.ratio});
    }
    std::reverse(breaks.lines.begin(), breaks.lines.end());
    return breaks;
  }

  const std::vector<BreakItem>& items_;
  const BreakOptions& options_;
  Sums sums_;
  std::vector<Node> nodes_;
  std::vector<int> active_;
  std::vector<int> kept_;
  std::vector<Node> offers_;
};

}  // namespace

std::optional<Breaks> break_lines(const std::vector<BreakItem>& items, const BreakOptions& options) {
  if (items.empty() || !is_forced(items.back())) return std::nullopt;
  return Breaker(items, options).run();
}

std::size_t line_start(const std::vector<BreakItem>& items, std::size_t end) { return skip_vanishing(items, end + 1); }

std::size_t first_line_start(const std::vector<BreakItem>& items) { return skip_vanishing(items, 0); }

}  // namespace benchleaf::page
