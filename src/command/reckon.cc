// reckon: one calculator at the terminal, or the list of them.

#include "bench/calculator.h"
#include "command/commands.h"
#include "command/workbench.h"
#include "derive/bench_figures.h"
#include "query/bench_names.h"

namespace benchleaf::command {

int run_reckon(const ReckonOptions& options, const CommonOptions& common, Terminal& terminal) {
  const bench::Form form = options.json ? bench::Form::json : bench::Form::text;
  if (options.name.empty()) {
    terminal.data(bench::calculators_written(form));
    return terminal.finish(kExitGood);
  }
  auto opened = open_records(common);
  if (const auto* unreadable = std::get_if<Unreadable>(&opened)) return terminal.failure(unreadable->why);
  auto& workbench = std::get<Workbench>(opened);
  terminal.findings(workbench.findings, workbench.files);
  if (workbench.findings.has_errors()) return kExitFindings;

  bench::Inputs inputs;
  for (const auto& [key, value] : options.inputs) inputs.emplace(key, bench::Given{value, model::Trust::given, {}});
  const model::FactBase figures = derive::bench_figures(workbench.base, workbench.tables);
  const query::BenchNames names(workbench.base, workbench.tables);
  const bench::Result result = bench::reckon(options.name, inputs, {workbench.tables, figures, &names});
  terminal.data(bench::written(result, form));
  return terminal.finish(result.refusal ? kExitFindings : kExitGood);
}

}  // namespace benchleaf::command
