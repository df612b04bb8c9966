// In: the folders of schema and content. Out: everything that the first three stages make of them: read, derive, prove.

#include "command/workbench.h"

#include <algorithm>
#include <memory>
#include <optional>
#include <set>
#include <system_error>
#include <utility>

#include "command/disk_files.h"
#include "command/extra_files.h"
#include "command/schema_folder.h"
#include "prove/prove.h"
#include "read/content_reader.h"
#include "read/renamed.h"
#include "read/shapes.h"

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;

Unreadable no_schema(const SchemaFolder& schema) {
  std::string places;
  for (const auto& place : schema.looked_at) places += (places.empty() ? "" : ", ") + place.generic_string();
  return {"there is no folder of shapes and tables; looked at " + places + " (name it with --schema)"};
}

/// What content is read by.
struct Form {
  read::Shapes shapes;
  read::Renamed renamed;
};

void read_schema(const fs::path& folder, Workbench& bench, Form& form) {
  const DiskFiles schema(folder);
  bench.schema = folder;
  form.shapes = read::load_shapes(schema, bench.files, bench.findings);
  const read::Shapes& shapes = form.shapes;
  form.renamed = read::read_renamed(schema, shapes, bench.files, bench.findings);
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

Unreadable no_folder(const fs::path& folder, const char* option) {
  return {"there is no folder " + folder.generic_string() + " to read (name it with " + option + ")"};
}

/// The overlays that the user named.
class Overlays {
 public:
  Overlays(const std::vector<std::string>& folders, const ExtraRecords& named) {
    std::error_code error;
    for (const std::string& folder : folders) {
      if (!fs::is_directory(folder, error) && !missing_) missing_ = no_folder(folder, "--overlay");
      files_.push_back(std::make_unique<OverlayFiles>(folder, named));
    }
  }

  const std::optional<Unreadable>& missing() const { return missing_; }

  /// Whether it is a file of an overlay that a finding speaks of.
  bool hold(const report::Finding& finding, const base::FileTable& files) const {
    if (finding.where.file == base::kNoFile) return false;
    const std::string& path = files.path(finding.where.file);
    return std::any_of(files_.begin(), files_.end(), [&path](const auto& one) { return path.rfind(one->shown({}), 0) == 0; });
  }

  model::KnowledgeBase read(const read::FileSource& content, const Form& form, base::FileTable& files,
                            report::Findings& findings) const {
    read::Additions additions{{}, form.renamed};
    for (const auto& overlay : files_) additions.overlays.push_back(overlay.get());
    return read::read_content(content, form.shapes, files, findings, additions);
  }

 private:
  std::vector<std::unique_ptr<OverlayFiles>> files_;
  std::optional<Unreadable> missing_;
};

}  // namespace

std::variant<Workbench, Unreadable> open_records(const CommonOptions& options) {
  const fs::path folder = find_content(options.content);
  const SchemaFolder schema = find_schema(options.schema, folder);
  if (schema.path.empty()) return no_schema(schema);
  const Overlays overlays(options.overlays, {});
  if (overlays.missing()) return *overlays.missing();
  Workbench bench;
  Form form;
  read_schema(schema.path, bench, form);
  const DiskFiles content(folder);
  std::error_code error;
  if (!fs::is_directory(folder, error) || !content.list()) return bench;
  report::Findings found;
  bench.base = overlays.read(content, form, bench.files, found);
  for (const report::Finding& one : found.all()) {
    if (overlays.hold(one, bench.files)) bench.findings.add(one);  // check tells those of the content
  }
  return bench;
}

std::variant<Workbench, Unreadable> open_content(const CommonOptions& options) {
  std::error_code error;
  const fs::path folder = find_content(options.content);
  if (!fs::is_directory(folder, error)) return no_folder(folder, "--content");
  const SchemaFolder schema = find_schema(options.schema, folder);
  if (schema.path.empty()) return no_schema(schema);
  const DiskFiles content(folder);
  if (!content.list()) return Unreadable{"the folder " + folder.generic_string() + " cannot be read"};
  const Overlays overlays(options.overlays, {});
  if (overlays.missing()) return *overlays.missing();
  Workbench bench;
  Form form;
  read_schema(schema.path, bench, form);
  bench.base = overlays.read(content, form, bench.files, bench.findings);
  return bench;
}

std::string left_out_line(const Workbench& bench) {
  std::set<base::FileId> files;
  for (const report::Finding& one : bench.findings.all()) {
    if (one.severity == report::Severity::error) files.insert(one.where.file);
  }
  if (files.empty()) return {};
  const std::string count = std::to_string(files.size()) + (files.size() == 1 ? " file has errors" : " files have errors");
  return count + ", and what they say is left out; benchleaf check names them";
}

std::variant<Workbench, Unreadable> open_workbench(const CommonOptions& options, const ExtraRecords& extra) {
  std::error_code error;
  const fs::path folder = find_content(options.content);
  if (!fs::is_directory(folder, error)) {
    return no_folder(folder, "--content");
  }
  const SchemaFolder schema = find_schema(options.schema, folder);
  if (schema.path.empty()) return no_schema(schema);
  const ExtraFiles content(folder, extra);
  if (!content.list()) return Unreadable{"the folder " + folder.generic_string() + " cannot be read"};
  const Overlays overlays(options.overlays, extra);
  if (overlays.missing()) return *overlays.missing();

  Workbench bench;
  Form form;
  read_schema(schema.path, bench, form);
  bench.base = overlays.read(content, form, bench.files, bench.findings);
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
