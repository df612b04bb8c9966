// In and out: records and shapes, as lines.
//   the lines of records (read/record_lines.h)
//   shape watch, and the lines of its tree (read/node_lines.h)
//   shape stock, and those of its own
#include "web/ticket_library.h"

#include <cstddef>
#include <utility>
#include <vector>

#include "base/line_parts.h"
#include "bench/figure_lines.h"
#include "read/node_lines.h"
#include "read/record_lines.h"
#include "standards/table_lines.h"

namespace benchleaf::web {

namespace {

using model::Kind;

constexpr std::string_view kWatchShape = "shape\twatch\n";
constexpr std::string_view kStockShape = "shape\tstock\n";

/// All but what only pages and lists speak of.
const std::vector<Kind>& kinds() {
  static const std::vector<Kind> kKinds = {Kind::cell,     Kind::module,  Kind::gasket,    Kind::crystal, Kind::material,
                                           Kind::part,     Kind::tool,    Kind::substance, Kind::residue, Kind::chemistry,
                                           Kind::abrasive, Kind::caution, Kind::procedure, Kind::symptom};
  return kKinds;
}

std::optional<read::Shape> shape_of(std::string_view lines) {
  const auto tree = read::read_node_lines(lines);
  report::Findings told;
  return tree ? read::Shape::compile(*tree, told) : std::nullopt;
}

}  // namespace

std::string ticket_lines(const model::KnowledgeBase& records, const model::Node& watch_shape, const model::Node& stock_shape) {
  return read::record_lines(records, kinds()) + std::string(kWatchShape) + read::node_lines(watch_shape) +
         std::string(kStockShape) + read::node_lines(stock_shape);
}

TicketLibrary read_ticket_library(std::string_view table_lines, std::string_view ticket_lines) {
  TicketLibrary library;
  auto published = standards::read_table_lines(table_lines.substr(0, bench::figures_start(table_lines)));
  const std::size_t watch = ticket_lines.find(kWatchShape);
  const std::size_t stock = ticket_lines.find(kStockShape);
  if (!published || watch == std::string_view::npos || stock == std::string_view::npos || stock < watch) {
    library.fault = "the page's data cannot be read";
    return library;
  }
  auto records = read::read_record_lines(ticket_lines.substr(0, watch));
  library.watch_shape = shape_of(ticket_lines.substr(watch + kWatchShape.size(), stock - watch - kWatchShape.size()));
  library.stock_shape = shape_of(ticket_lines.substr(stock + kStockShape.size()));
  std::vector<model::TableFault> faults;
  library.tables = model::make_tables(std::move(*published), faults);
  if (!records || !library.watch_shape || !library.stock_shape || !faults.empty()) {
    library.fault = "the page's data cannot be read";
    return library;
  }
  library.records = std::move(*records);
  report::Findings told;
  library.derived = derive::derive(library.records, library.tables, told);
  return library;
}

}  // namespace benchleaf::web
