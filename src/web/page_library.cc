// In and out: tables, records and shapes, as lines.
//   the lines of tables (standards/table_lines.h)
//   part records, and the lines of records (read/record_lines.h)
//   part watch, and the lines of the shape of a watch (read/node_lines.h)
//   part stock, and those of a drawer's
#include "web/page_library.h"

#include <utility>
#include <vector>

#include "query/names.h"
#include "read/node_lines.h"
#include "read/record_lines.h"
#include "standards/table_lines.h"

namespace benchleaf::web {

namespace {

using model::Kind;

constexpr std::string_view kRecords = "part\trecords\n";
constexpr std::string_view kWatchShape = "part\twatch\n";
constexpr std::string_view kStockShape = "part\tstock\n";
constexpr const char* kFault = "the page's data cannot be read";

/// All that is looked up, of pages their heads, and what tickets are planned by.
std::vector<Kind> kinds() {
  std::vector<Kind> list;
  for (const Kind kind : model::all_kinds()) {
    if (query::is_looked_up(kind) || model::is_of_ticket(kind)) list.push_back(kind);
  }
  return list;
}

std::optional<read::Shape> shape_of(std::string_view lines) {
  const auto tree = read::read_node_lines(lines);
  report::Findings told;
  return tree ? read::Shape::compile(*tree, told) : std::nullopt;
}

/// Takes off what stands before the line `head`, and the line itself; nothing where it is not there.
std::optional<std::string_view> take_before(std::string_view& text, std::string_view head) {
  const std::size_t at = text.find(head);
  if (at == std::string_view::npos) return std::nullopt;
  const std::string_view before = text.substr(0, at);
  text.remove_prefix(at + head.size());
  return before;
}

bool read_parts(std::string_view lines, PageLibrary& library) {
  const auto tables = take_before(lines, kRecords);
  const auto records = take_before(lines, kWatchShape);
  const auto watch = take_before(lines, kStockShape);
  if (!tables || !records || !watch) return false;
  auto published = standards::read_table_lines(*tables);
  auto read = read::read_record_lines(*records);
  library.watch_shape = shape_of(*watch);
  library.stock_shape = shape_of(lines);
  if (!published || !read || !library.watch_shape || !library.stock_shape) return false;
  std::vector<model::TableFault> faults;
  library.tables = model::make_tables(std::move(*published), faults);
  library.records = std::move(*read);
  return faults.empty();
}

}  // namespace

std::string page_lines(const std::vector<model::PublishedTable>& tables, const model::KnowledgeBase& records,
                       const model::Node& watch_shape, const model::Node& stock_shape) {
  std::string lines = standards::table_lines(tables);
  lines += std::string(kRecords) + read::record_lines(records, kinds());
  lines += std::string(kWatchShape) + read::node_lines(watch_shape);
  return lines + std::string(kStockShape) + read::node_lines(stock_shape);
}

PageLibrary read_page_library(std::string_view lines) {
  PageLibrary library;
  if (!read_parts(lines, library)) library.fault = kFault;
  return library;
}

}  // namespace benchleaf::web
