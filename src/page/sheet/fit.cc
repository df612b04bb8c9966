// In: the panels of one side, a paper. Out: size of type, number of columns, and the panels that have room.
//
// Sizes are searched by halving, which is right because panels only grow with their type; a trial is a full setting, so
// that what is measured is what is printed.
#include "page/sheet/fit.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>
#include <utility>

#include "page/look.h"

namespace benchleaf::page {
namespace {

constexpr double kStepPt = 0.05;
constexpr double kNarrowestMm = 80;
constexpr double kWidestMm = 150;
constexpr double kPanelGapMm = 3.2;
/// More air between rows parts them instead of joining them to a panel.
constexpr double kMostAirMm = 8;
constexpr Length kAirStep = 100;

PanelWidth width_of(const SheetPaper& paper, int columns) {
  return {(paper.live_width() - paper.gap * (columns - 1)) / columns, paper.gap, columns};
}

/// The numbers of columns in which lines are neither too short nor too long to be found again.
std::vector<int> column_counts(const SheetPaper& paper) {
  std::vector<int> counts;
  for (int columns = 1; columns <= 6; ++columns) {
    const Length width = width_of(paper, columns).column;
    if (width >= from_mm(kNarrowestMm) && width <= from_mm(kWidestMm)) counts.push_back(columns);
  }
  return counts;
}

/// Sets panels without leaving a trace in a document.
class Scratch {
 public:
  Scratch(TextSetter& text, const SheetPaper& paper) : sheet_(paper), setting_{text, findings_, book_paper_, tags_, {}, {}, {}} {}

  Length height(const std::vector<model::Panel>& panels, double words_pt, int columns) {
    return trial(panels, words_pt, columns).arrangement.height;
  }
  /// Whether something of the last trial stood over the edge of its column.
  bool was_too_wide() const { return !findings_.all().empty(); }
  Trial trial(const std::vector<model::Panel>& panels, double words_pt, int columns, const std::vector<Length>& air = {}) {
    tags_.clear();
    findings_ = {};
    const TagId root = setting_.add_tag(Role::document, kLayoutArtifact);
    return set_trial(setting_, panels, sheet_, words_pt, columns, root, air);
  }

 private:
  const SheetPaper& sheet_;
  Paper book_paper_;
  report::Findings findings_;
  std::vector<Tag> tags_;
  Setting setting_;
};

class Fitter {
 public:
  Fitter(TextSetter& text, const SheetPaper& paper) : paper_(paper), scratch_(text, paper) {}

  /// The columns in which the panels are lowest at the floor, and how much they miss, negative where they fit. Columns that
  /// are too narrow for a table count only where all are; what sticks out is told when the sheet is set.
  std::pair<int, Length> lowest(const std::vector<model::Panel>& panels) {
    std::pair<int, Length> best{0, 0};
    bool best_is_wide = false;
    for (const int columns : column_counts(paper_)) {
      const Length missing = scratch_.height(panels, paper_.floor_pt, columns) - paper_.live_height();
      const bool wide = scratch_.was_too_wide();
      const bool better = best.first == 0 || (wide == best_is_wide ? missing < best.second : best_is_wide);
      if (better) best = {columns, missing}, best_is_wide = wide;
    }
    return best;
  }

  void grow(SheetFit& fit) {
    for (const int columns : column_counts(paper_)) {
      int low = static_cast<int>(std::lround(fit.words_pt / kStepPt));
      if (!fits(fit.panels, low, columns)) continue;
      int high = static_cast<int>(std::lround(kLargestPt / kStepPt));
      while (low < high) {
        const int middle = (low + high + 1) / 2;
        if (fits(fit.panels, middle, columns)) {
          low = middle;
        } else {
          high = middle - 1;
        }
      }
      if (low * kStepPt > fit.words_pt) fit.words_pt = low * kStepPt, fit.columns = columns;
    }
  }

  /// Spare height goes between rows: of all panels alike, then of each column that is shorter than its neighbours.
  void give_air(SheetFit& fit) {
    fit.air.assign(fit.panels.size(), 0);
    std::vector<std::size_t> all(fit.panels.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    grow_air(fit, all, [this](const Trial& trial) { return trial.arrangement.height <= paper_.live_height(); });
    const Trial even = set(fit);
    for (std::size_t begin = 0; begin < all.size();) {
      const std::size_t end = row_end(fit.panels, begin);
      fill_columns(fit, even, begin, end);
      begin = end;
    }
    fit.covered = covered(set(fit));
  }

  std::vector<std::string> limits(const SheetFit& fit) {
    std::vector<std::string> titles;
    const Trial trial = scratch_.trial(fit.panels, fit.words_pt, fit.columns);
    for (const std::size_t panel : trial.arrangement.fullest) titles.push_back(fit.panels[panel].title);
    return titles;
  }

 private:
  bool fits(const std::vector<model::Panel>& panels, int steps, int columns) {
    return scratch_.height(panels, steps * kStepPt, columns) <= paper_.live_height() && !scratch_.was_too_wide();
  }

  Trial set(const SheetFit& fit) { return scratch_.trial(fit.panels, fit.words_pt, fit.columns, fit.air); }

  /// Where the row of columns ends that begins with this panel; a wide panel is one by itself.
  static std::size_t row_end(const std::vector<model::Panel>& panels, std::size_t begin) {
    std::size_t end = begin + 1;
    while (!panels[begin].wide && end < panels.size() && !panels[end].wide) ++end;
    return end;
  }

  /// The most air for these panels, all alike, with which the sheet is still as it should be.
  template <class Good>
  void grow_air(SheetFit& fit, const std::vector<std::size_t>& members, const Good& good) {
    const std::vector<Length> before = fit.air;
    const auto with = [&](Length more) {
      fit.air = before;
      for (const std::size_t panel : members) fit.air[panel] += more * kAirStep;
    };
    Length low = 0;
    Length high = from_mm(kMostAirMm) / kAirStep;
    while (low < high) {
      const Length middle = (low + high + 1) / 2;
      with(middle);
      if (good(set(fit))) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    with(low);
  }

  /// Rings beside rows: tables of one kind in neighbouring columns keep one pitch.
  static bool has_rings(const model::Panel& panel) {
    return std::any_of(panel.blocks.begin(), panel.blocks.end(), [](const model::PanelBlock& block) {
      const auto* table = std::get_if<model::Table>(&block);
      return table != nullptr && !table->rows.empty() && !table->rows.front().cells.empty() &&
             table->rows.front().cells.front().hangs;
    });
  }

  static bool any_rings(const std::vector<model::Panel>& panels, std::size_t begin, std::size_t end) {
    const auto first = panels.begin();
    return std::any_of(first + static_cast<std::ptrdiff_t>(begin), first + static_cast<std::ptrdiff_t>(end), has_rings);
  }

  void fill_columns(SheetFit& fit, const Trial& even, std::size_t begin, std::size_t end) {
    Length bottom = 0;
    for (std::size_t i = begin; i < end; ++i) bottom = std::max(bottom, even.arrangement.places[i].top + even.sizes[i].height);
    for (std::size_t start = begin; start < end;) {
      std::size_t stop = start + 1;
      while (stop < end && even.arrangement.places[stop].column == even.arrangement.places[start].column) ++stop;
      const bool beside = any_rings(fit.panels, begin, start) || any_rings(fit.panels, stop, end);
      if (!beside || !any_rings(fit.panels, start, stop))
        fill_column(fit, even.arrangement.places[start].column, start, stop, bottom);
      start = stop;
    }
  }

  void fill_column(SheetFit& fit, int column, std::size_t start, std::size_t stop, Length bottom) {
    std::vector<std::size_t> members(stop - start);
    std::iota(members.begin(), members.end(), start);
    grow_air(fit, members, [&](const Trial& trial) {
      const std::size_t last = stop - 1;
      return trial.arrangement.places[last].column == column && trial.arrangement.places[start].column == column &&
             trial.arrangement.places[last].top + trial.sizes[last].height <= bottom;
    });
  }

  double covered(const Trial& trial) const {
    double area = 0;
    for (std::size_t i = 0; i < trial.sizes.size(); ++i) {
      const Length width = trial.sizes[i].wide ? paper_.live_width() : trial.width.column;
      area += static_cast<double>(width) * static_cast<double>(trial.sizes[i].height);
    }
    return area / (static_cast<double>(paper_.live_width()) * static_cast<double>(paper_.live_height()));
  }

  const SheetPaper& paper_;
  Scratch scratch_;
};

std::string by_how_much(Length missing) {
  const double mm = static_cast<double>(missing) / static_cast<double>(from_mm(1));
  return std::to_string(static_cast<int>(std::ceil(mm))) + " mm too high at the least type that is read at arm's length";
}

constexpr const char* kWhatToDo = "take records out of a panel, put a panel on the other side, or leave this paper out";

/// Panels of a side by their places in it.
struct Choice {
  std::vector<std::size_t> kept;
  std::vector<std::pair<std::size_t, Length>> dropped;  ///< with what the sheet was too high by beside those that are kept
  int columns = 0;
  Length missing = 0;  ///< by those that must stay
};

std::vector<model::Panel> those_of(const std::vector<model::Panel>& panels, const std::vector<std::size_t>& places) {
  std::vector<model::Panel> some;
  for (const std::size_t place : places) some.push_back(panels[place]);
  return some;
}

/// A low panel may have room where a high one that is worth more had none.
void readmit(Fitter& fitter, const std::vector<model::Panel>& panels, Choice& choice) {
  const auto left = std::exchange(choice.dropped, {});
  for (auto one = left.rbegin(); one != left.rend(); ++one) {
    std::vector<std::size_t> with = choice.kept;
    with.insert(std::upper_bound(with.begin(), with.end(), one->first), one->first);
    const auto [columns, missing] = fitter.lowest(those_of(panels, with));
    if (missing <= 0) {
      choice.kept = with;
      choice.columns = columns;
    } else {
      choice.dropped.emplace_back(one->first, missing);
    }
  }
  std::reverse(choice.dropped.begin(), choice.dropped.end());
}

/// Those that have room at the floor, the ones with the highest `keep` left out first.
Choice choose(Fitter& fitter, const std::vector<model::Panel>& panels) {
  Choice choice;
  choice.kept.resize(panels.size());
  std::iota(choice.kept.begin(), choice.kept.end(), std::size_t{0});
  for (;;) {
    std::tie(choice.columns, choice.missing) = fitter.lowest(those_of(panels, choice.kept));
    if (choice.missing <= 0) break;
    const auto last = std::max_element(choice.kept.begin(), choice.kept.end(),
                                       [&panels](std::size_t a, std::size_t b) { return panels[a].keep < panels[b].keep; });
    if (last == choice.kept.end() || panels[*last].keep <= 1) return choice;
    choice.dropped.emplace_back(*last, choice.missing);
    choice.kept.erase(last);
  }
  readmit(fitter, panels, choice);
  return choice;
}

}  // namespace

Trial set_trial(Setting& setting, const std::vector<model::Panel>& panels, const SheetPaper& paper, double words_pt, int columns,
                TagId parent, const std::vector<Length>& air) {
  Trial trial;
  trial.width = width_of(paper, columns);
  setting.scale = words_pt / look::table_cell().size_pt;
  setting.least_pt = paper.floor_pt;
  for (std::size_t i = 0; i < panels.size(); ++i) {
    const model::Panel& panel = panels[i];
    setting.row_air = i < air.size() ? air[i] : 0;
    PanelWidth width = trial.width;
    if (!panel.wide) width.parts = 1;
    Strip strip = set_panel(setting, panel, width, parent);
    trial.sizes.push_back({strip.height, panel.wide});
    trial.strips.push_back(std::move(strip));
  }
  trial.arrangement = arrange(trial.sizes, columns, setting.mm(kPanelGapMm));
  setting.scale = 1;
  setting.least_pt = 0;
  setting.row_air = 0;
  return trial;
}

SheetFit fit_side(TextSetter& text, const model::SheetSet& chart, const model::Sheet& side, const SheetPaper& paper,
                  report::Findings& findings) {
  Fitter fitter(text, paper);
  const Choice choice = choose(fitter, side.panels);
  SheetFit fit;
  fit.words_pt = paper.floor_pt;
  fit.columns = choice.columns;
  fit.panels = those_of(side.panels, choice.kept);
  const std::string where = "chart '" + chart.id + "' on " + paper.name + ": ";
  for (const auto& [panel, missing] : choice.dropped) {
    const model::Panel& left_out = side.panels[panel];
    report::Finding& finding = findings.add(report::Rule::chart_panel_dropped, {},
                                            where + "no room for '" + left_out.title + "', " + by_how_much(missing), kWhatToDo);
    if (left_out.spare) finding.severity = report::Severity::note;  // its chart says that it may
    fit.dropped.push_back(left_out.title);
  }
  if (choice.missing > 0) {
    findings.add(report::Rule::chart_full, {}, where + "what must stay is " + by_how_much(choice.missing), kWhatToDo);
    return fit;
  }
  fitter.grow(fit);
  fit.limited_by = fitter.limits(fit);
  fitter.give_air(fit);
  return fit;
}

}  // namespace benchleaf::page
