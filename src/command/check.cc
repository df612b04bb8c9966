// check: reads, derives, proves, and says what is wrong.

#include <nlohmann/json.hpp>

#include <string>

#include "command/changed_part.h"
#include "command/commands.h"
#include "command/explain.h"
#include "command/git.h"
#include "command/schema_folder.h"
#include "command/whole_file.h"
#include "command/workbench.h"
#include "compose/charts/chart.h"
#include "compose/entries/book.h"
#include "report/json.h"
#include "report/print.h"
#include "report/sarif.h"

namespace benchleaf::command {
namespace {

/// The same rules as {"rules": [{id, severity, reason, source}]}.
std::string rules_json() {
  nlohmann::ordered_json list = nlohmann::ordered_json::array();
  for (const auto& rule : report::all_rules()) {
    list.push_back(
        {{"id", rule.id}, {"severity", report::severity_name(rule.severity)}, {"reason", rule.reason}, {"source", rule.source}});
  }
  return nlohmann::ordered_json{{"rules", std::move(list)}}.dump(2) + "\n";
}

/// The rules by their order in rules.def: id, severity, reason.
std::string rules_text() {
  std::string text;
  for (const auto& rule : report::all_rules()) {
    text += std::string(rule.id) + " (" + std::string(report::severity_name(rule.severity)) + "): " + std::string(rule.reason) +
            " [" + std::string(rule.source) + "]\n";
  }
  return text;
}

int exit_code(const report::Findings& findings, bool strict) {
  const bool bad = findings.has_errors() || (strict && findings.count(report::Severity::warning) > 0);
  return bad ? kExitFindings : kExitGood;
}

int explain(const std::string& id, Terminal& terminal) {
  const auto text = explain_rule(id);
  if (!text) {
    const std::string nearest = nearest_rule(id);
    return terminal.failure("there is no rule " + id +
                            (nearest.empty() ? " (see check --rules)" : ", did you mean " + nearest + "?"));
  }
  terminal.data(*text);
  return terminal.finish(kExitGood);
}

/// What only composing the book shows. A broken record would break the blocks that name it, which says nothing new.
void check_composition(Workbench& bench) {
  if (bench.findings.has_errors()) return;
  compose::check_blocks(bench.base, bench.tables, bench.derived, bench.findings);
  compose::make_charts(bench.base, bench.tables, bench.derived, bench.findings);
}

/// Puts each finding where the author of a change looks for it, and leaves out what the change did not touch. One line where that
/// cannot be done, or an empty text.
std::string turn_to_the_change(Workbench& bench, const CheckOptions& options, const std::filesystem::path& content) {
  const Git git(content);
  report_at_newer(bench.findings, bench.files, git);
  if (options.changed_since.empty()) return {};
  if (!git.answers()) return "--changed-since needs git, and content in a git repository";
  const auto changed = git.changed_since(options.changed_since);
  if (!changed) return "there is no commit " + options.changed_since + " in this repository";
  bench.findings = of_changed(bench.findings, bench.files, *changed);
  return {};
}

}  // namespace

int run_check(const CheckOptions& options, const CommonOptions& common, Terminal& terminal) {
  if (options.rules) {
    terminal.data(options.json ? rules_json() : rules_text());
    return terminal.finish(kExitGood);
  }
  if (!options.explain.empty()) return explain(options.explain, terminal);
  auto opened = open_workbench(common);
  if (const auto* unreadable = std::get_if<Unreadable>(&opened)) return terminal.failure(unreadable->why);
  auto& bench = std::get<Workbench>(opened);
  check_composition(bench);
  if (const std::string why = turn_to_the_change(bench, options, find_content(common.content)); !why.empty())
    return terminal.failure(why);
  bench.findings.sort(bench.files);
  if (options.json) {
    terminal.data(report::findings_json(bench.findings, bench.files));
  } else {
    terminal.findings(bench.findings, bench.files);
  }
  if (!options.sarif.empty() &&
      !write_file(options.sarif, report::findings_sarif(bench.findings, bench.files, BENCHLEAF_VERSION))) {
    return terminal.failure("the file " + options.sarif + " cannot be written");
  }
  terminal.progress("checked " + record_count(bench) + ": " + terminal.count(bench.findings));
  return terminal.finish(exit_code(bench.findings, options.strict));
}

}  // namespace benchleaf::command
