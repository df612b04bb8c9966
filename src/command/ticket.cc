// ticket: the plan for one watch, as text, PDF and HTML. Everything is made in memory first; only a run without an error touches
// the folder of tickets.

#include <array>
#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "command/commands.h"
#include "command/manifest.h"
#include "command/named_files.h"
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

Named name_files(const TicketOptions& options) {
  Named named;
  std::vector<std::string> watches = {options.watch};
  watches.insert(watches.end(), options.order.begin(), options.order.end());
  for (const std::string& file : watches) {
    if (named.problem.empty()) named.problem = name_file(file, "watch", named.records);
    named.watches.push_back(fs::path(file).stem().string());
  }
  if (options.stock.empty() || !named.problem.empty()) return named;
  named.problem = name_file(options.stock, "stock", named.records);
  named.drawer = fs::path(options.stock).stem().string();
  return named;
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
