// label: labels for bottles, bags and drawers on a sheet of a common grid, as one PDF. Everything is made in memory first.

#include "label/labels.h"

#include <algorithm>
#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/number.h"
#include "command/commands.h"
#include "command/named_files.h"
#include "command/output_folder.h"
#include "command/setting.h"
#include "command/workbench.h"
#include "compose/uses.h"
#include "page/set_labels.h"
#include "pdf/writer.h"

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;

/// The call of `label` with its words read; `problem` says why it cannot be.
struct Call {
  ExtraRecords records;
  std::string drawer;                ///< id, or empty
  std::vector<std::string> watches;  ///< ids
  std::string problem;
};

std::string fault_of(const LabelOptions& options) {
  if (options.things.empty() && options.stock.empty() && options.watches.empty() && options.mixture.empty())
    return "name what to label: a record, --stock, --watch or --mixture";
  if (!options.mixture.empty() && options.name.empty()) return "--mixture needs --name, the name for the bottle";
  if (options.mixture.empty() && !(options.name.empty() && options.measured.empty()))
    return "--name, --ph, --flash and --boiling go with --mixture";
  const bool own = !options.label.empty();
  if (!own && !(options.pitch + options.corner + options.columns + options.rows + options.paper).empty())
    return "--columns, --rows, --pitch, --corner and --paper describe a sheet of your own: add --label";
  return {};
}

Call read_call(const LabelOptions& options) {
  Call call;
  call.problem = fault_of(options);
  for (const std::string& file : options.watches) {
    if (call.problem.empty()) call.problem = name_file(file, "watch", call.records);
    call.watches.push_back(fs::path(file).stem().string());
  }
  if (!options.stock.empty() && call.problem.empty()) call.problem = name_file(options.stock, "stock", call.records);
  call.drawer = fs::path(options.stock).stem().string();
  return call;
}

std::variant<model::LabelGrid, label::Refused> grid_of(const LabelOptions& options, const model::Tables& tables) {
  if (options.label.empty()) {
    const std::vector<std::string> names = label::grid_names(tables);
    return label::read_grid(tables, !options.grid.empty() || names.empty() ? options.grid : names.front());
  }
  return label::read_grid({options.paper, options.label, options.pitch, options.corner, options.columns, options.rows});
}

using Orders = std::vector<label::Order>;
using Ordered = std::variant<label::Order, label::Refused>;

/// Records by their names, then what the drawer holds, watches, and the mixture.
std::vector<Ordered> orders_of(const LabelOptions& options, const Call& call, const compose::Desk& desk) {
  const query::BenchNames names(desk.records, desk.tables);
  const label::OrderWords shared{{}, {}, {}, {}, options.date, options.copies};
  std::vector<Ordered> orders;
  for (const std::string& thing : options.things) {
    label::OrderWords words = shared;
    words.thing = thing;
    orders.push_back(label::read_order(desk, names, words));
  }
  if (const auto drawer = desk.records.stocks.find(call.drawer); drawer != desk.records.stocks.end()) {
    for (label::Thing& thing : label::things_in(drawer->second)) orders.push_back(label::read_order(std::move(thing), shared));
  }
  for (const std::string& watch : call.watches)
    orders.push_back(label::read_order(label::Thing{model::RecordRef(model::Kind::watch, watch), {}, {}, {}, {}, {}}, shared));
  if (!options.mixture.empty())
    orders.push_back(
        label::read_order(desk, names, {{}, options.mixture, options.name, options.measured, options.date, options.copies}));
  return orders;
}

/// Everything that was asked for, or why nothing is printed.
std::variant<model::LabelSheets, label::Refused> sheets_of(const LabelOptions& options, const Call& call,
                                                           const compose::Desk& desk) {
  auto grid = grid_of(options, desk.tables);
  if (auto* refused = std::get_if<label::Refused>(&grid)) return std::move(*refused);
  Orders orders;
  for (Ordered& order : orders_of(options, call, desk)) {
    if (auto* refused = std::get_if<label::Refused>(&order)) return std::move(*refused);
    orders.push_back(std::get<label::Order>(std::move(order)));
  }
  auto made = label::sheets_of(desk, std::get<model::LabelGrid>(std::move(grid)), options.start, orders);
  if (auto* sheets = std::get_if<model::LabelSheets>(&made)) {
    if (sheets->labels.empty()) return label::Refused{"the drawer holds nothing to label", {}, false, {}};
    sheets->outlines = options.outlines;
  }
  return made;
}

int refuse(const label::Refused& refused, Terminal& terminal) {
  std::string why = refused.why;
  if (!refused.hint.empty() && why.ends_with('.')) why.pop_back();
  const int code = terminal.failure(why + (refused.hint.empty() ? "" : "; " + refused.hint));
  return terminal.finish(refused.bad_call ? code : kExitFindings);
}

label::Refused misfit(const page::LabelMisfit& misfit, const model::LabelGrid& grid, const model::Tables& tables) {
  const std::string larger = label::larger_grids(grid, tables);
  return {"the label of " + misfit.title + " needs " + base::fixed_text(misfit.missing_mm, 1) + " mm more height than " +
              grid.name + " has",
          "take larger labels" + (larger.empty() ? std::string() : ", such as --grid " + larger), false, "grid"};
}

/// Which label lies where: `1  393 SR754W`, and where the next run begins.
std::string places_text(const model::LabelSheets& sheets) {
  std::string text;
  int place = sheets.first;
  int sheet = 1;
  for (const model::Label& one : sheets.labels) {
    if (place == sheets.grid.count()) place = 0, text += "sheet " + std::to_string(++sheet) + "\n";
    text += "  " + std::to_string(++place) + "  " + base::to_terminal(one.title) + "\n";
  }
  const bool full = place == sheets.grid.count();
  return text + "next free: " + (full ? "a new sheet" : "--start " + std::to_string(place + 1)) + "\n";
}

std::string put_in_place(const std::string& folder, const std::string& name, const std::string& bytes) {
  OutputFolder output(folder, kLabelFolder);
  output.write(name, bytes);
  output.commit();
  return output.problem();
}

}  // namespace

int run_label(const LabelOptions& options, const CommonOptions& common, Terminal& terminal) {
  const Call call = read_call(options);
  if (!call.problem.empty()) return terminal.failure(call.problem);
  auto opened = open_workbench(common, call.records);
  if (const auto* unreadable = std::get_if<Unreadable>(&opened)) return terminal.failure(unreadable->why);
  auto& bench = std::get<Workbench>(opened);
  bench.findings = of_concern(bench, call.records);
  std::optional<model::LabelSheets> sheets;
  std::string bytes;
  if (!bench.findings.has_errors()) {
    const compose::Uses uses(bench.base);
    const compose::Desk desk{bench.base, bench.tables, bench.derived, uses, bench.findings};
    auto made = sheets_of(options, call, desk);
    if (const auto* refused = std::get_if<label::Refused>(&made)) return refuse(*refused, terminal);
    sheets = std::get<model::LabelSheets>(std::move(made));
    const auto type = open_type_case(bench.fonts, bench.findings);
    if (type) {
      const page::LabelDocument set = page::set_labels(*sheets, type->fonts, &type->hyphenator, bench.findings);
      if (!set.misfits.empty()) return refuse(misfit(set.misfits.front(), sheets->grid, bench.tables), terminal);
      if (!bench.findings.has_errors())
        bytes = pdf::write_pdf(set.document, type->fonts, {type->bytes.profile.bytes}, bench.findings);
    }
  }
  terminal.findings(bench.findings, bench.files);
  if (bench.findings.has_errors() || bytes.empty()) {
    terminal.progress("nothing was written: " + terminal.count(bench.findings));
    return terminal.finish(kExitFindings);
  }
  const std::string name = "labels-" + sheets->grid.name + ".pdf";
  const std::string problem = put_in_place(options.to, name, bytes);
  if (!problem.empty()) return terminal.failure(problem);
  terminal.data(places_text(*sheets));
  terminal.progress("labels in " + (fs::path(options.to) / kLabelFolder / name).string() +
                    "; print at 100 %: " + terminal.count(bench.findings));
  return terminal.finish(kExitGood);
}

}  // namespace benchleaf::command
