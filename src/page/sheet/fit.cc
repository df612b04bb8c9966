// In: the panels of one side, a paper. Out: size of type, number of columns, and the panels that have room.
//
// Sizes are searched by halving, which is right because panels only grow with their type; a trial is a full setting, so
// that what is measured is what is printed.
#include "page/sheet/fit.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "page/look.h"

namespace benchleaf::page {
namespace {

constexpr double kStepPt = 0.05;
constexpr double kNarrowestMm = 80;
constexpr double kWidestMm = 150;
constexpr double kPanelGapMm = 3.2;

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
  Trial trial(const std::vector<model::Panel>& panels, double words_pt, int columns) {
    tags_.clear();
    const TagId root = setting_.add_tag(Role::document, kLayoutArtifact);
    return set_trial(setting_, panels, sheet_, words_pt, columns, root);
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

  /// The columns in which the panels are lowest at the floor, and how much they miss, negative where they fit.
  std::pair<int, Length> lowest(const std::vector<model::Panel>& panels) {
    std::pair<int, Length> best{0, 0};
    for (const int columns : column_counts(paper_)) {
      const Length missing = scratch_.height(panels, kFloorPt, columns) - paper_.live_height();
      if (best.first == 0 || missing < best.second) best = {columns, missing};
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

  std::vector<std::string> limits(const SheetFit& fit) {
    std::vector<std::string> titles;
    const Trial trial = scratch_.trial(fit.panels, fit.words_pt, fit.columns);
    for (const std::size_t panel : trial.arrangement.fullest) titles.push_back(fit.panels[panel].title);
    return titles;
  }

 private:
  bool fits(const std::vector<model::Panel>& panels, int steps, int columns) {
    return scratch_.height(panels, steps * kStepPt, columns) <= paper_.live_height();
  }

  const SheetPaper& paper_;
  Scratch scratch_;
};

std::string by_how_much(Length missing) {
  const double mm = static_cast<double>(missing) / static_cast<double>(from_mm(1));
  return std::to_string(static_cast<int>(std::ceil(mm))) + " mm too high at the least type that is read at arm's length";
}

constexpr const char* kWhatToDo = "take records out of a panel, put a panel on the other side, or leave this paper out";

}  // namespace

Trial set_trial(Setting& setting, const std::vector<model::Panel>& panels, const SheetPaper& paper, double words_pt, int columns,
                TagId parent) {
  Trial trial;
  trial.width = width_of(paper, columns);
  setting.scale = words_pt / look::table_cell().size_pt;
  setting.least_pt = kFloorPt;
  for (const model::Panel& panel : panels) {
    PanelWidth width = trial.width;
    if (!panel.wide) width.parts = 1;
    Strip strip = set_panel(setting, panel, width, parent);
    trial.sizes.push_back({strip.height, panel.wide});
    trial.strips.push_back(std::move(strip));
  }
  trial.arrangement = arrange(trial.sizes, columns, setting.mm(kPanelGapMm));
  setting.scale = 1;
  setting.least_pt = 0;
  return trial;
}

SheetFit fit_side(TextSetter& text, const model::SheetSet& chart, const model::Sheet& side, const SheetPaper& paper,
                  report::Findings& findings) {
  Fitter fitter(text, paper);
  SheetFit fit;
  fit.panels = side.panels;
  const std::string where = "chart '" + chart.id + "' on " + paper.name + ": ";
  for (;;) {
    const auto [columns, missing] = fitter.lowest(fit.panels);
    fit.columns = columns;
    if (missing <= 0) break;
    const auto last = std::max_element(fit.panels.begin(), fit.panels.end(),
                                       [](const model::Panel& a, const model::Panel& b) { return a.keep < b.keep; });
    if (last == fit.panels.end() || last->keep <= 1) {
      findings.add(report::Rule::chart_full, {}, where + "what must stay is " + by_how_much(missing), kWhatToDo);
      return fit;
    }
    findings.add(report::Rule::chart_panel_dropped, {}, where + "no room for '" + last->title + "', " + by_how_much(missing),
                 kWhatToDo);
    fit.dropped.push_back(last->title);
    fit.panels.erase(last);
  }
  fitter.grow(fit);
  fit.limited_by = fitter.limits(fit);
  return fit;
}

}  // namespace benchleaf::page
