// In: a calculator and its inputs as text, as the page passes them. Out: the text of the result.

#include "bench/request.h"

#include <cstddef>
#include <vector>

#include "bench/figure_lines.h"
#include "model/tables.h"
#include "standards/table_lines.h"

namespace benchleaf::bench {

std::pair<Request, std::optional<std::string>> read_request(std::string_view text) {
  Request request;
  bool first = true;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    const std::string line(text.substr(0, end));
    text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
    if (first) {
      request.name = line;
    } else if (!line.empty()) {
      const std::size_t equals = line.find('=');
      if (equals == std::string::npos || equals == 0) return {std::move(request), line};
      request.inputs.insert_or_assign(line.substr(0, equals), Given{line.substr(equals + 1), model::Trust::given, {}});
    }
    first = false;
  }
  return {std::move(request), std::nullopt};
}

std::string answer_request(std::string_view lines, std::string_view request_text, Form form) {
  const std::size_t figures_at = figures_start(lines);
  auto published = standards::read_table_lines(lines.substr(0, figures_at));
  if (!published) return "the tables of this page cannot be read\n";
  std::vector<model::TableFault> faults;
  const model::Tables tables = model::make_tables(std::move(*published), faults);
  model::FactBase figures;
  if (figures_at < lines.size()) {
    auto read = read_figure_lines(lines.substr(figures_at));
    if (!read) return "the figures of this page cannot be read\n";
    figures = std::move(*read);
  }
  const auto [request, wrong_line] = read_request(request_text);
  if (wrong_line) return "'" + *wrong_line + "' is no input: write key=value\n";
  if (request.name.empty()) return calculators_written(form);
  return written(reckon(request.name, request.inputs, Context{tables, figures}), form);
}

}  // namespace benchleaf::bench
