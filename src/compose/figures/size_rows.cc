// In: the sizes of cells. Out: rows to find a cell by its size, for book and chart.
#include "compose/figures/size_rows.h"

#include <utility>

#include "compose/figures/cell_drawing.h"

namespace benchleaf::compose {

std::vector<model::TableRow> size_rows(const Desk& desk, model::Style style, const SaySize& say) {
  std::vector<model::TableRow> rows;
  double last_mm = -1;
  for (const derive::SizeFamily& family : desk.derived.relations.sizes()) {
    const model::Cell* first = family.cells.empty() ? nullptr : desk.cell(family.cells.front());
    const model::Fact* across = first == nullptr ? nullptr : desk.fact(*first, "size.diameter");
    if (across == nullptr) continue;
    Line words(desk);
    say(desk, words, family);
    if (words.empty()) continue;
    if (family.diameter_mm > last_mm) {
      rows.push_back({{{{model::fact_run(*across, style)}, cell_outline(*across)}, {words.take(), nullptr}}, {}});
    } else {
      model::Runs& runs = rows.back().cells.back().runs;
      for (model::Run& run : Line(desk).line_break().take()) runs.push_back(std::move(run));
      for (model::Run& run : words.take()) runs.push_back(std::move(run));
    }
    last_mm = family.diameter_mm;
  }
  return rows;
}

}  // namespace benchleaf::compose
