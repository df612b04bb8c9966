// In: earlier visits of a watch. Out: a table of them, today's line empty.
#include "base/quantity.h"
#include "ticket/history_drawing.h"
#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

namespace {

using Kind = SheetLine::Kind;
using model::Style;

model::Runs figure(const std::optional<base::Quantity>& quantity) {
  return text_runs(is_known(quantity) ? base::printed(*quantity) : "\u2013", Style::bold);
}

model::Runs word(const std::string& text) { return text_runs(text.empty() ? "\u2013" : text); }

std::vector<model::Runs> row_of(const SheetContext& context, const model::Watch::Visit& visit) {
  std::string done = visit.done;
  if (!visit.left.empty()) done += (done.empty() ? "left: " : "; left: ") + visit.left;
  return {text_runs(visit.date),     visit.cell.empty() ? word({}) : text_runs(context.desk.name(visit.cell), Style::bold),
          figure(visit.old_voltage), figure(visit.new_voltage),
          figure(visit.draw),        text_runs(visit.rate.empty() ? "\u2013" : visit.rate, Style::bold),
          word(visit.gasket),        word(done)};
}

std::vector<model::Runs> today(const SheetContext& context) {
  std::vector<model::Runs> cells = {text_runs("today", Style::bold)};
  for (const double mm : {18.0, 12.0, 12.0, 12.0, 10.0, 10.0, 40.0}) {
    compose::Line line = context.line();
    cells.push_back(line.blank(mm).take());
  }
  return cells;
}

}  // namespace

void add_history(const SheetContext& context, std::vector<SheetSection>& front) {
  if (context.watch.visits.empty()) return;
  SectionBuilder section("history", "What this watch has had",
                         "today's line is yours; a box on a bar: where its end is reckoned");
  for (const model::Watch::Visit& visit : context.watch.visits) section.row(Kind::words, row_of(context, visit), visit.cell);
  section.row(Kind::words, today(context));
  SheetSection made = section.take();
  for (auto drawing : {cell_bars(context), reading_plots(context)}) {
    if (drawing != nullptr) made.drawings.push_back(std::move(drawing));
  }
  front.push_back(std::move(made));
}

}  // namespace benchleaf::ticket
