// In: findings, and what git says of the files. Out: the findings where the author of a change looks for them.

#include "command/changed_part.h"

#include <algorithm>
#include <system_error>
#include <utility>

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;
using report::Finding;
using report::Rule;

/// Whether either of two records may be the wrong one, the other standing in the first note.
bool is_of_two(const Finding& finding) {
  switch (finding.rule) {
    case Rule::number_unique:
    case Rule::record_twin:
    case Rule::substance_number_twice:
      return finding.notes.size() == 1 && finding.where.file != base::kNoFile &&
             finding.notes.front().where.file != base::kNoFile && finding.notes.front().where.file != finding.where.file;
    default: return false;
  }
}

/// The same clash, told at its other place.
Finding turned(Finding finding) {
  std::swap(finding.where, finding.notes.front().where);
  finding.notes.front().text = "the other stands here";
  return finding;
}

bool is_in(const base::Span& where, const base::FileTable& files, const std::set<fs::path>& changed) {
  if (where.file == base::kNoFile) return false;
  std::error_code error;
  return changed.count(fs::weakly_canonical(files.path(where.file), error)) > 0;
}

}  // namespace

void report_at_newer(report::Findings& findings, const base::FileTable& files, const Git& git) {
  report::Findings placed;
  for (const Finding& one : findings.all()) {
    if (!is_of_two(one)) {
      placed.add(one);
      continue;
    }
    const auto newer = git.is_newer(files.path(one.where.file), files.path(one.notes.front().where.file));
    if (newer.value_or(true)) placed.add(one);
    if (!newer.value_or(false)) placed.add(turned(one));
  }
  findings = std::move(placed);
}

report::Findings of_changed(const report::Findings& findings, const base::FileTable& files, const std::set<fs::path>& changed) {
  report::Findings kept;
  for (const Finding& one : findings.all()) {
    const bool other_half = std::any_of(one.notes.begin(), one.notes.end(),
                                        [&](const report::Note& note) { return is_in(note.where, files, changed); });
    if (one.severity == report::Severity::error || other_half || is_in(one.where, files, changed)) kept.add(one);
  }
  return kept;
}

}  // namespace benchleaf::command
