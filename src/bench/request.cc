// In: a calculator and its inputs as text, as the page passes them. Out: the text of the result.

#include "bench/request.h"

#include <cstddef>
#include <utility>
#include <vector>

#include "bench/figure_lines.h"
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

Library read_library(std::string_view lines) {
  Library library;
  const std::size_t figures_at = figures_start(lines);
  auto published = standards::read_table_lines(lines.substr(0, figures_at));
  auto figures = figures_at < lines.size() ? read_figure_lines(lines.substr(figures_at)) : model::FactBase();
  if (!published) library.fault = "the tables of this page cannot be read\n";
  if (published && !figures) library.fault = "the figures of this page cannot be read\n";
  if (!library.fault.empty()) return library;
  std::vector<model::TableFault> faults;
  library.tables = model::make_tables(std::move(*published), faults);
  library.figures = std::move(*figures);
  return library;
}

std::string answer_request(const Library& library, std::string_view request_text, Form form) {
  if (!library.fault.empty()) return library.fault;
  const auto [request, wrong_line] = read_request(request_text);
  if (wrong_line) return "'" + *wrong_line + "' is no input: write key=value\n";
  if (request.name.empty()) return calculators_written(form);
  return written(reckon(request.name, request.inputs, {library.tables, library.figures}), form);
}

}  // namespace benchleaf::bench
