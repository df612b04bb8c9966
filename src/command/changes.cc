// changes: what two states of the content say differently.

#include <optional>
#include <string>
#include <variant>

#include "command/changes_written.h"
#include "command/commands.h"
#include "command/workbench.h"

namespace benchleaf::command {
namespace {

/// One state, or nothing after its faults were told.
std::optional<Workbench> open_state(const std::string& content, CommonOptions common, Terminal& terminal) {
  common.content = content;
  auto opened = open_workbench(common);
  if (const auto* unreadable = std::get_if<Unreadable>(&opened)) {
    terminal.failure(unreadable->why);
    return std::nullopt;
  }
  auto& bench = std::get<Workbench>(opened);
  if (!bench.findings.has_errors()) return std::move(bench);
  terminal.findings(bench.findings, bench.files);
  terminal.failure("the content " + content + " has errors, so nothing was compared with it");
  return std::nullopt;
}

std::string written(const compose::Changes& changes, const ChangesOptions& options) {
  if (options.json) return changes_json(changes);
  const Detail detail = options.working ? Detail::working : Detail::brief;
  return options.markdown ? changes_markdown(changes, detail) : changes_text(changes, detail);
}

}  // namespace

int run_changes(const ChangesOptions& options, const CommonOptions& common, Terminal& terminal) {
  const auto before = open_state(options.before, common, terminal);
  const auto after = before ? open_state(options.after, common, terminal) : std::nullopt;
  if (!after) return kExitUsage;
  const compose::Changes changes =
      compose::compare({before->base, before->tables, before->derived}, {after->base, after->tables, after->derived});
  terminal.data(written(changes, options));
  return terminal.finish(changes.empty() ? kExitGood : kExitFindings);
}

}  // namespace benchleaf::command
