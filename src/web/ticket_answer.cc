// In: a watch and a drawer as the page's form has them. Out: what the command `ticket` makes of a file with the same words.
#include "web/ticket_answer.h"

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "bench/json_text.h"
#include "html/leaflet.h"
#include "prove/checks.h"
#include "prove/published_checks.h"
#include "read/record_names.h"
#include "read/typed_record.h"
#include "ticket/plan.h"
#include "ticket/plan_text.h"
#include "ticket/sheets.h"

namespace benchleaf::web {

namespace {

using model::Kind;

/// Those of `check` that speak of a watch or a drawer.
constexpr prove::Check kChecks[] = {prove::check_references, prove::check_watches, prove::check_watch_numbers,
                                    prove::check_stock_sizes};

/// The names of all records, so that a word of the form means one.
read::RecordNames names_of(const model::KnowledgeBase& records) {
  read::RecordNames names;
  for (const model::Record* record : records.all()) names.add(record->reference());
  for (const auto& [old_id, new_id] : records.aliases) names.add_alias(old_id, new_id);
  return names;
}

/// A record of the user's own, with its measures as given.
template <typename RecordType>
RecordType own_record(const PageLibrary& library, const read::Shape& shape, const model::Node& tree, Kind kind,
                      report::Findings& findings) {
  read::ShapeReport report = read::check_shape(shape, tree, {}, findings);
  model::Record frame;
  frame.kind = kind;
  frame.file = kRequestFile;
  if (const model::Node* id = tree.find("id")) frame.id = id->text;
  frame.root = tree;
  frame.unusable = std::move(report.unusable);
  frame.basis_paths = std::move(report.basis_paths);
  read::keep_quantities(std::move(report.quantities), frame);
  const read::RecordNames names = names_of(library.records);
  for (read::FoundReference& found : report.references) frame.references.push_back(names.resolve(std::move(found)));
  RecordType record = read::typed_record<RecordType>(std::move(frame));
  model::take_as_given(record);
  return record;
}

/// `watch.gasket-seat` of the request is `gasket-seat` of the watch.
std::string path_of(const base::Span& where, const std::vector<std::string>& paths) {
  const auto line = static_cast<std::size_t>(where.line);
  if (where.file == base::kNoFile || line == 0 || line > paths.size()) return {};
  const std::string& path = paths.at(line - 1);
  const std::string_view watch = "watch.";
  return path.substr(0, watch.size()) == watch ? path.substr(watch.size()) : path == "watch" ? std::string() : path;
}

void write_findings(const report::Findings& findings, const std::vector<std::string>& paths, bench::JsonText& json) {
  json.key("findings").open_array();
  for (const report::Finding& finding : findings.all()) {
    json.open_object();
    json.member("severity", report::severity_name(finding.severity));
    json.member("rule", report::rule_info(finding.rule).id);
    json.member("path", path_of(finding.where, paths));
    json.member("message", finding.message);
    json.member("hint", finding.hint);
    json.close();
  }
  json.close();
}

/// Text and page of a ticket.
struct Written {
  std::string text;
  std::string html;
};

Written write_ticket(const TicketGround& ground, const model::Node& request, report::Findings& findings) {
  const PageLibrary& library = ground.library;
  const model::Node* watch_tree = request.find("watch");
  if (watch_tree == nullptr) {
    findings.add(report::Rule::yaml_syntax, {}, "the form cannot be read");
    return {};
  }
  auto watch = own_record<model::Watch>(library, *library.watch_shape, *watch_tree, Kind::watch, findings);
  std::optional<model::Stock> drawer;
  if (const model::Node* stock_tree = request.find("stock"))
    drawer = own_record<model::Stock>(library, *library.stock_shape, *stock_tree, Kind::stock, findings);
  if (findings.has_errors()) return {};
  model::KnowledgeBase records = library.records;
  const auto there = records.watches.insert_or_assign(watch.id, std::move(watch)).first;
  if (drawer) records.stocks.insert_or_assign(drawer->id, *drawer);
  for (const prove::Check check : kChecks) check(prove::Proof{records, library.tables, ground.derived, findings});
  if (findings.has_errors()) return {};
  const ticket::Bench bench{records, library.tables, ground.derived, there->second, drawer ? &*drawer : nullptr};
  const ticket::Plan plan = ticket::make_plan(bench, findings);
  if (findings.has_errors()) return {};
  const ticket::Sheets sheets = ticket::make_sheets(bench, plan, findings);
  const model::Leaflet leaflet = ticket::ticket_leaflet(bench, plan, sheets, ticket::Extent::whole, findings);
  return {ticket::sheets_text(plan, sheets, records), html::render_leaflet(leaflet, findings)};
}

}  // namespace

std::string answer_ticket(const TicketGround& ground, const model::Node& request, const std::vector<std::string>& paths) {
  report::Findings findings;
  const Written written = write_ticket(ground, request, findings);
  bench::JsonText json;
  json.open_object();
  write_findings(findings, paths, json);
  json.member("text", written.text);
  json.member("html", written.html);
  json.close();
  return json.done();
}

}  // namespace benchleaf::web
