// In: where the program lies, tables and records. Out: the page's program that was built with it, and a plain script with one
// string of what it looks into.
#include "command/page_scripts.h"

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <system_error>
#include <utility>

#include "bench/json_text.h"
#include "command/disk_files.h"
#include "html/assets.h"
#include "read/shapes.h"
#include "web/page_library.h"

namespace benchleaf::command {
namespace {

const std::string kHtml = "html/";

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

/// What the program looks into; empty where a shape is missing, which its own finding says.
std::string page_data(const Workbench& bench) {
  const DiskFiles schema(bench.schema);
  const auto watch = read::shape_tree(schema, "watch");
  const auto stock = read::shape_tree(schema, "stock");
  if (!watch || !stock) return {};
  return string_script("benchleafData", web::page_lines(bench.tables.published, bench.base, *watch, *stock));
}

}  // namespace

Files page_scripts(Workbench& bench) {
  Files files;
  files.emplace(kHtml + std::string(html::kDataPath), page_data(bench));
  if (auto script = built_script("program.js", bench.findings))
    files.emplace(kHtml + std::string(html::kProgramPath), std::move(*script));
  return files;
}

}  // namespace benchleaf::command
