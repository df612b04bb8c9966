// In: a plan. Out: the words of its front sheet and of its job sheets.
#include "ticket/sheets.h"

#include <algorithm>

#include "compose/uses.h"
#include "derive/bench_figures.h"
#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

const SheetSection* Sheets::section(std::string_view id) const {
  const auto found = std::find_if(front.begin(), front.end(), [id](const auto& one) { return one.id == id; });
  return found == front.end() ? nullptr : &*found;
}

std::vector<SheetSection> Sheets::all() const {
  std::vector<SheetSection> list = front;
  for (const JobSheet& job : jobs) {
    list.push_back(job.steps);
    for (const SheetSection& section : job.beside) {
      list.push_back(section);
      list.back().id = job.steps.id + "-" + section.id;
    }
  }
  return list;
}

Sheets make_sheets(const Bench& bench, const Plan& plan, report::Findings& findings) {
  const compose::Uses uses(bench.records);
  const compose::Desk desk{bench.records, bench.tables, bench.derived, uses, findings};
  const model::FactBase figures = derive::bench_figures(bench.records, bench.tables);
  const std::optional<model::Stock> ready = ready_stock(desk, figures, bench);
  const Context context{desk, figures, bench.watch, ready ? &*ready : bench.drawer, !ready};
  const SheetContext sheet{desk, bench.watch, context, plan, Marks(plan.marks.begin(), plan.marks.end()), bench.page};
  Sheets sheets;
  add_front(sheet, sheets.front);
  if (plan.one_page)
    sheets.jobs.push_back(brief_sheet(sheet));
  else
    add_job_sheets(sheet, sheets.jobs);
  return sheets;
}

}  // namespace benchleaf::ticket
