// In: the folders of schema and content. Out: everything that the first three stages make of them: read, derive, prove.

#include "command/workbench.h"

#include <system_error>
#include <utility>

#include "command/disk_files.h"
#include "command/extra_files.h"
#include "command/schema_folder.h"
#include "prove/prove.h"
#include "read/content_reader.h"
#include "read/shapes.h"

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;

Unreadable no_schema(const SchemaFolder& schema) {
  std::string places;
  for (const auto& place : schema.looked_at) places += (places.empty() ? "" : ", ") + place.generic_string();
  return {"there is no folder of shapes and tables; looked at " + places + " (name it with --schema)"};
}

void read_schema(const fs::path& folder, Workbench& bench, read::Shapes& shapes) {
  const DiskFiles schema(folder);
  bench.schema = folder;
  shapes = read::load_shapes(schema, bench.files, bench.findings);
  bench.tables = read::read_tables(schema, shapes, bench.files, bench.findings);
  bench.fonts = read::read_fonts(schema, shapes, bench.files, bench.findings);
}

void take_as_given(model::KnowledgeBase& base, const ExtraRecords& extra) {
  for (const auto& [path, file] : extra) {
    const std::string id = fs::path(path).stem().string();
    if (const auto watch = base.watches.find(id); watch != base.watches.end() && path.rfind("watch/", 0) == 0)
      model::take_as_given(watch->second);
    if (const auto stock = base.stocks.find(id); stock != base.stocks.end() && path.rfind("stock/", 0) == 0)
      model::take_as_given(stock->second);
  }
}

}  // namespace

std::variant<Workbench, Unreadable> open_records(const CommonOptions& options) {
  const fs::path folder = find_content(options.content);
  const SchemaFolder schema = find_schema(options.schema, folder);
  if (schema.path.empty()) return no_schema(schema);
  Workbench bench;
  read::Shapes shapes;
  read_schema(schema.path, bench, shapes);
  const DiskFiles content(folder);
  std::error_code error;
  if (!fs::is_directory(folder, error) || !content.list()) return bench;
  report::Findings of_content;  // check tells them
  bench.base = read::read_content(content, shapes, bench.files, of_content);
  return bench;
}

std::variant<Workbench, Unreadable> open_workbench(const CommonOptions& options, const ExtraRecords& extra) {
  std::error_code error;
  const fs::path folder = find_content(options.content);
  if (!fs::is_directory(folder, error)) {
    return Unreadable{"there is no folder " + folder.generic_string() + " to read (name it with --content)"};
  }
  const SchemaFolder schema = find_schema(options.schema, folder);
  if (schema.path.empty()) return no_schema(schema);
  const ExtraFiles content(folder, extra);
  if (!content.list()) return Unreadable{"the folder " + folder.generic_string() + " cannot be read"};

  Workbench bench;
  read::Shapes shapes;
  read_schema(schema.path, bench, shapes);
  bench.base = read::read_content(content, shapes, bench.files, bench.findings);
  take_as_given(bench.base, extra);
  bench.derived = derive::derive(bench.base, bench.tables, bench.findings);
  prove::prove(bench.base, bench.tables, bench.derived, bench.findings);
  return bench;
}

std::string record_count(const Workbench& bench) {
  const std::size_t count = bench.base.all().size();
  return std::to_string(count) + (count == 1 ? " record" : " records");
}

}  // namespace benchleaf::command
