// In: tables and records. Out: a script with one string, `benchleafLines`.

#include "command/page_data.h"

#include <cstddef>

#include "bench/figure_lines.h"
#include "bench/json_text.h"
#include "derive/bench_figures.h"
#include "standards/table_lines.h"

namespace benchleaf::command {
namespace {

/// A script that stands inside a page must not close its element.
std::string without_end_tags(std::string script) {
  for (std::size_t at = script.find("</"); at != std::string::npos; at = script.find("</", at + 1)) script.insert(at + 1, "\\");
  return script;
}

}  // namespace

std::string page_data(const Workbench& bench) {
  const std::string lines =
      standards::table_lines(bench.tables.published) + bench::figure_lines(derive::bench_figures(bench.base, bench.tables));
  std::string quoted = bench::JsonText().text(lines).done();
  quoted.pop_back();
  return without_end_tags("var benchleafLines = " + quoted + ";\n");
}

}  // namespace benchleaf::command
