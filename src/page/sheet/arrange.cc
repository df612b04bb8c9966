// In: heights of panels in order. Out: their places in columns, as low as the order allows.
//
// Between two wide panels the narrow ones are cut into as many runs as there are columns; the cuts are found by dynamic
// programming, least height of the highest run first, then earliest cuts, so that the result is one.
#include "page/sheet/arrange.h"

#include <algorithm>
#include <limits>

namespace benchleaf::page {
namespace {

constexpr Length kNever = std::numeric_limits<Length>::max() / 4;

/// Height of the panels from `begin` to before `end` under each other.
Length run_height(const std::vector<PanelSize>& panels, std::size_t begin, std::size_t end, Length gap) {
  Length height = 0;
  for (std::size_t i = begin; i < end; ++i) height += panels[i].height + (i == begin ? 0 : gap);
  return height;
}

/// Where each run of the panels from `begin` to before `end` ends; as many as there are columns, later ones may be empty.
std::vector<std::size_t> best_cuts(const std::vector<PanelSize>& panels, std::size_t begin, std::size_t end, int columns,
                                   Length gap) {
  const std::size_t count = end - begin;
  const auto runs = static_cast<std::size_t>(columns);
  std::vector<std::vector<Length>> least(runs + 1, std::vector<Length>(count + 1, kNever));
  std::vector<std::vector<std::size_t>> from(runs + 1, std::vector<std::size_t>(count + 1, 0));
  least[0][0] = 0;
  for (std::size_t run = 1; run <= runs; ++run) {
    for (std::size_t stop = 0; stop <= count; ++stop) {
      for (std::size_t start = 0; start <= stop; ++start) {
        const Length high = std::max(least[run - 1][start], run_height(panels, begin + start, begin + stop, gap));
        if (high < least[run][stop]) least[run][stop] = high, from[run][stop] = start;
      }
    }
  }
  std::vector<std::size_t> cuts(runs);
  std::size_t stop = count;
  for (std::size_t run = runs; run > 0; --run) {
    cuts[run - 1] = begin + stop;
    stop = from[run][stop];
  }
  return cuts;
}

class Arranger {
 public:
  Arranger(const std::vector<PanelSize>& panels, int columns, Length gap) : panels_(panels), columns_(columns), gap_(gap) {
    result_.places.resize(panels.size());
  }

  Arrangement run() {
    std::size_t i = 0;
    while (i < panels_.size()) {
      std::size_t end = i;
      if (panels_[i].wide) {
        open_row();
        result_.places[i] = {0, result_.height};
        result_.fullest.push_back(i);
        result_.height += panels_[i].height;
        ++i;
        continue;
      }
      while (end < panels_.size() && !panels_[end].wide) ++end;
      open_row();
      place_narrow(i, end);
      i = end;
    }
    return std::move(result_);
  }

 private:
  void open_row() {
    if (result_.height > 0) result_.height += gap_;
  }

  void place_narrow(std::size_t begin, std::size_t end) {
    const Length top = result_.height;
    Length highest = 0;
    std::pair<std::size_t, std::size_t> fullest{begin, begin};
    std::size_t start = begin;
    const std::vector<std::size_t> cuts = best_cuts(panels_, begin, end, columns_, gap_);
    for (std::size_t column = 0; column < cuts.size(); ++column) {
      Length y = top;
      for (std::size_t i = start; i < cuts[column]; ++i) {
        result_.places[i] = {static_cast<int>(column), y};
        y += panels_[i].height + gap_;
      }
      const Length height = run_height(panels_, start, cuts[column], gap_);
      if (height > highest) highest = height, fullest = {start, cuts[column]};
      start = cuts[column];
    }
    for (std::size_t i = fullest.first; i < fullest.second; ++i) result_.fullest.push_back(i);
    result_.height = top + highest;
  }

  const std::vector<PanelSize>& panels_;
  int columns_;
  Length gap_;
  Arrangement result_;
};

}  // namespace

Arrangement arrange(const std::vector<PanelSize>& panels, int columns, Length gap) {
  return Arranger(panels, columns, gap).run();
}

void spread(Arrangement& arrangement, const std::vector<PanelSize>& panels, Length height, Length most) {
  std::size_t i = 0;
  Length down = 0;
  const Length spare = std::max<Length>(0, height - arrangement.height);
  // Rows of the sheet, each a wide panel or a set of columns, move down together; the spare height goes between them.
  std::size_t rows = 0;
  for (std::size_t k = 0; k < panels.size(); ++k) rows += panels[k].wide || k == 0 || panels[k - 1].wide;
  const Length step = rows > 1 ? std::min(most, spare / static_cast<Length>(rows - 1)) : 0;
  while (i < panels.size()) {
    std::size_t end = i + 1;
    if (!panels[i].wide) {
      while (end < panels.size() && !panels[end].wide) ++end;
    }
    Length bottom = 0;
    for (std::size_t k = i; k < end; ++k) bottom = std::max(bottom, arrangement.places[k].top + panels[k].height);
    for (std::size_t start = i; start < end;) {
      std::size_t stop = start + 1;
      while (stop < end && arrangement.places[stop].column == arrangement.places[start].column) ++stop;
      const Length own = arrangement.places[stop - 1].top + panels[stop - 1].height;
      const auto gaps = static_cast<Length>(stop - start - 1);
      const Length grow = gaps > 0 ? std::min(most, (bottom - own) / gaps) : 0;
      for (std::size_t k = start; k < stop; ++k) arrangement.places[k].top += down + grow * static_cast<Length>(k - start);
      start = stop;
    }
    down += step;
    i = end;
  }
}

}  // namespace benchleaf::page
