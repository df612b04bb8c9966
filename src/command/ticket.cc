// ticket: the plan for one watch, as text, PDF and HTML. Everything is made in memory first; only a run without an error touches
// the folder of tickets.

#include <algorithm>
#include <array>
#include <filesystem>
#include <optional>
#include <string>
#include <system_error>
#include <utility>
#include <vector>

#include "command/commands.h"
#include "command/manifest.h"
#include "command/output_folder.h"
#include "command/page_numbers.h"
#include "command/setting.h"
#include "command/ticket_written.h"
#include "command/workbench.h"
#include "html/leaflet.h"
#include "pdf/writer.h"
#include "read/two_threads.h"
#include "report/print.h"
#include "ticket/plan.h"
#include "ticket/plan_text.h"
#include "ticket/sheets.h"

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;

constexpr std::array<const char*, 2> kPapers = {"a4", "letter"};

/// The files that the user named, by the records that they stand for.
struct Named {
  ExtraRecords records;
  std::vector<std::string> watches;  ///< ids, the one of the ticket first
  std::string drawer;                ///< id, or empty
  std::string problem;               ///< why they cannot be used, or empty
};

void name_file(const std::string& file, const std::string& kind, Named& named) {
  std::error_code error;
  if (!fs::is_regular_file(file, error)) {
    named.problem = "the file " + file + " cannot be read";
    return;
  }
  const fs::path path(file);
  const auto [there, is_new] = named.records.emplace(kind + "/" + path.filename().string(), path);
  if (!is_new && !fs::equivalent(there->second, path, error))
    named.problem = "two files are called " + path.filename().string() + ": a record is known by the name of its file";
  if (!is_new && named.problem.empty()) named.problem = "the file " + file + " is named twice";
}

Named name_files(const TicketOptions& options) {
  Named named;
  std::vector<std::string> watches = {options.watch};
  watches.insert(watches.end(), options.order.begin(), options.order.end());
  for (const std::string& file : watches) {
    if (named.problem.empty()) name_file(file, "watch", named);
    named.watches.push_back(fs::path(file).stem().string());
  }
  if (options.stock.empty() || !named.problem.empty()) return named;
  name_file(options.stock, "stock", named);
  named.drawer = fs::path(options.stock).stem().string();
  return named;
}

/// Whether it speaks of a watch or a drawer that nobody asked for: that one stops its own ticket alone.
bool is_of_another_watch(const Workbench& bench, const ExtraRecords& records, const report::Finding& finding) {
  if (finding.where.file == base::kNoFile) return false;
  const fs::path path(bench.files.path(finding.where.file));
  const std::string folder = path.parent_path().filename().string();
  if (folder != "watch" && folder != "stock") return false;
  return std::none_of(records.begin(), records.end(), [&path](const auto& one) { return one.second == path; });
}

/// What check tells of the rest of the content is not asked for here, unless it is an error.
report::Findings of_concern(const Workbench& bench, const ExtraRecords& records) {
  report::Findings kept;
  for (const report::Finding& finding : bench.findings.all()) {
    if (is_of_another_watch(bench, records, finding)) continue;
    bool named = finding.where.file == base::kNoFile;
    for (const auto& [path, file] : records) named = named || bench.files.path(finding.where.file) == file.generic_string();
    if (!named && finding.severity != report::Severity::error) continue;
    report::Finding& copy = kept.add(finding.rule, finding.where, finding.message, finding.hint);
    copy = finding;
  }
  return kept;
}

std::optional<ticket::Bench> bench_of(const Workbench& bench, const std::string& id, const std::string& stock) {
  const auto drawer = bench.base.stocks.find(stock);
  const auto watch = bench.base.watches.find(id);
  if (watch == bench.base.watches.end()) return std::nullopt;
  return ticket::Bench{bench.base, bench.tables, bench.derived, watch->second,
                       drawer == bench.base.stocks.end() ? nullptr : &drawer->second};
}

std::vector<ticket::Plan> make_plans(Workbench& bench, const Named& named) {
  std::vector<ticket::Plan> plans;
  for (const std::string& id : named.watches) {
    if (const auto one = bench_of(bench, id, named.drawer)) plans.push_back(ticket::make_plan(*one, bench.findings));
  }
  return plans;
}

/// The ticket on both papers and on the screen; incomplete where a finding is an error.
Files make_files(Workbench& bench, const model::Leaflet& leaflet) {
  const auto type = open_type_case(bench.fonts, bench.findings);
  if (!type) return {};
  const std::string name = "ticket-" + leaflet.id;
  std::array<std::string, kPapers.size()> pages;
  std::array<report::Findings, kPapers.size()> said;
  read::on_two_threads(kPapers.size(), [&](std::size_t i) {
    const page::Document document = set_leaflet_on(leaflet, kPapers[i], *type, said[i]);
    if (!said[i].has_errors()) pages[i] = pdf::write_pdf(document, type->fonts, {type->bytes.profile.bytes}, said[i]);
  });
  Files files;
  for (std::size_t i = 0; i < kPapers.size(); ++i) {
    files.emplace(name + "-" + kPapers[i] + ".pdf", std::move(pages[i]));
    bench.findings.append(std::move(said[i]));
  }
  files.emplace(name + ".html", html::render_leaflet(leaflet, bench.findings));
  return files;
}

std::string put_in_place(const std::string& folder, const Files& files) {
  OutputFolder output(folder, kTicketFolder);
  for (const auto& [name, bytes] : files) output.write(name, bytes);
  output.commit();
  return output.problem();
}

}  // namespace

int run_ticket(const TicketOptions& options, const CommonOptions& common, Terminal& terminal) {
  const Named named = name_files(options);
  if (!named.problem.empty()) return terminal.failure(named.problem);
  auto opened = open_workbench(common, named.records);
  if (const auto* unreadable = std::get_if<Unreadable>(&opened)) return terminal.failure(unreadable->why);
  auto& bench = std::get<Workbench>(opened);
  bench.findings = of_concern(bench, named.records);
  std::vector<ticket::Plan> plans;
  ticket::Sheets sheets;
  Files files;
  if (!bench.findings.has_errors()) plans = make_plans(bench, named);
  if (!plans.empty()) {
    ticket::Bench first = *bench_of(bench, plans.front().watch, named.drawer);
    first.page = page_numbers(common);
    sheets = ticket::make_sheets(first, plans.front(), bench.findings);
    const auto extent = options.sheet == "front" ? ticket::Extent::front : ticket::Extent::whole;
    files = make_files(bench, ticket::ticket_leaflet(first, plans.front(), sheets, extent, bench.findings));
  }
  terminal.findings(bench.findings, bench.files);
  if (bench.findings.has_errors() || plans.size() != named.watches.size()) {
    terminal.progress("nothing was written: " + terminal.count(bench.findings));
    return terminal.finish(kExitFindings);
  }
  const std::string problem = put_in_place(options.to, files);
  if (!problem.empty()) return terminal.failure(problem);
  const std::vector<ticket::PlanNeed> order = ticket::shopping_list(plans);
  const compose::Uses uses(bench.base);
  const compose::Desk desk{bench.base, bench.tables, bench.derived, uses, bench.findings};
  const bool ordered = !options.order.empty();
  if (options.json) {
    terminal.data(plan_json(plans.front(), sheets, desk, ordered ? &order : nullptr));
  } else {
    terminal.data(ticket::sheets_text(plans.front(), sheets, bench.base) +
                  (ordered ? ticket::order_text(desk, order, plans.size()) : std::string()));
  }
  terminal.progress("ticket of " + plans.front().watch + " in " + (fs::path(options.to) / kTicketFolder).string() + ": " +
                    terminal.count(bench.findings));
  return terminal.finish(kExitGood);
}

}  // namespace benchleaf::command
