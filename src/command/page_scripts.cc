// In: where the program lies, tables and records. Out: the scripts that were built with it, and beside each a plain script with
// one string of what it looks into.
#include "command/page_scripts.h"

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <system_error>
#include <utility>

#include "bench/figure_lines.h"
#include "bench/json_text.h"
#include "command/disk_files.h"
#include "derive/bench_figures.h"
#include "read/shapes.h"
#include "standards/table_lines.h"
#include "web/ticket_library.h"

namespace benchleaf::command {
namespace {

const std::string kAssets = "html/assets/";

std::optional<std::string> built_script(const std::string& name, report::Findings& findings) {
  namespace fs = std::filesystem;
  std::error_code ignored;
  const fs::path folder = fs::read_symlink("/proc/self/exe", ignored).parent_path();
  const fs::path installed = folder.parent_path() / "share" / "benchleaf";
  for (const fs::path& place : {folder, installed}) {
    if (auto text = read_file(place / name)) return text;
  }
  findings.add(report::Rule::html_calculators, {}, name + " lies neither beside the program nor in " + installed.string(),
               "build the target bench-web, which needs Debian's package emscripten");
  return std::nullopt;
}

/// `var NAME = "TEXT";`. A script that stands inside a page must not close its element.
std::string string_script(const std::string& name, const std::string& text) {
  std::string quoted = bench::JsonText().text(text).done();
  quoted.pop_back();
  for (std::size_t at = quoted.find("</"); at != std::string::npos; at = quoted.find("</", at + 1)) quoted.insert(at + 1, "\\");
  return "var " + name + " = " + quoted + ";\n";
}

/// Tables and figures of records, for both scripts.
std::string bench_data(const Workbench& bench) {
  return string_script("benchleafLines", standards::table_lines(bench.tables.published) +
                                             bench::figure_lines(derive::bench_figures(bench.base, bench.tables)));
}

/// Records and shapes, for the ticket's form; empty where a shape is missing, which its own finding says.
std::string ticket_data(const Workbench& bench) {
  const DiskFiles schema(bench.schema);
  const auto watch = read::shape_tree(schema, "watch");
  const auto stock = read::shape_tree(schema, "stock");
  return watch && stock ? string_script("benchleafRecords", web::ticket_lines(bench.base, *watch, *stock)) : std::string();
}

}  // namespace

Files page_scripts(Workbench& bench) {
  Files files;
  files.emplace(kAssets + "bench-data.js", bench_data(bench));
  files.emplace(kAssets + "ticket-data.js", ticket_data(bench));
  for (const char* name : {"bench.js", "ticket.js"}) {
    if (auto script = built_script(name, bench.findings)) files.emplace(kAssets + name, std::move(*script));
  }
  return files;
}

}  // namespace benchleaf::command
