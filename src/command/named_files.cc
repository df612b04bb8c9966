// In: files that the user named. Out: the records that they stand for, and the findings that concern them.
#include "command/named_files.h"

#include <algorithm>
#include <filesystem>
#include <system_error>

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;

/// Whether it speaks of a watch or a drawer that nobody asked for: that one stops its own run alone.
bool is_of_another(const Workbench& bench, const ExtraRecords& records, const report::Finding& finding) {
  if (finding.where.file == base::kNoFile) return false;
  const fs::path path(bench.files.path(finding.where.file));
  const std::string folder = path.parent_path().filename().string();
  if (folder != "watch" && folder != "stock") return false;
  return std::none_of(records.begin(), records.end(), [&path](const auto& one) { return one.second == path; });
}

}  // namespace

std::string name_file(const std::string& file, const std::string& kind, ExtraRecords& records) {
  std::error_code error;
  if (!fs::is_regular_file(file, error)) return "the file " + file + " cannot be read";
  const fs::path path(file);
  const auto [there, is_new] = records.emplace(kind + "/" + path.filename().string(), path);
  if (is_new) return {};
  if (!fs::equivalent(there->second, path, error))
    return "two files are called " + path.filename().string() + ": a record is known by the name of its file";
  return "the file " + file + " is named twice";
}

report::Findings of_concern(const Workbench& bench, const ExtraRecords& records) {
  report::Findings kept;
  for (const report::Finding& finding : bench.findings.all()) {
    if (is_of_another(bench, records, finding)) continue;
    bool named = finding.where.file == base::kNoFile;
    for (const auto& [path, file] : records) named = named || bench.files.path(finding.where.file) == file.generic_string();
    if (!named && finding.severity != report::Severity::error) continue;
    report::Finding& copy = kept.add(finding.rule, finding.where, finding.message, finding.hint);
    copy = finding;
  }
  return kept;
}

}  // namespace benchleaf::command
