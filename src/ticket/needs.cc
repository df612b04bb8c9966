// In: the module, the gasket, the ladder, the jobs, the drawer. Out: what the plan needs, with what does as well, and where it
// lies if it is there.
#include <algorithm>
#include <map>

#include "base/quantity.h"
#include "ticket/planner.h"

namespace benchleaf::compose {

namespace {

constexpr std::string_view kCandidate = "candidate.";

std::string size_of(const Desk& desk, const model::Cell& cell) {
  const model::Fact* diameter = desk.fact(cell, "size.diameter");
  const model::Fact* height = desk.fact(cell, "size.height");
  return diameter == nullptr || height == nullptr ? std::string() : ", " + diameter->printed + " \u00D7 " + height->printed;
}

std::string system_words(const model::Cell& cell) { return ", " + plain_words(cell.system); }

/// Cells that do as well, by cell-swap: `303 SR44SW, with care: ...`.
/// A display that lights itself draws so much that only what is said without reserve does.
void add_instead(Planner& planner, const model::Cell& cell, PlanNeed& need) {
  const model::Module* module = planner.module();
  const std::string lamp = module == nullptr || !module->lamp ? "yes" : module->lamp == model::Lamp::none ? "no" : "yes";
  const bench::Result result =
      bench::reckon("cell-swap", {{"cell", {cell.id, model::Trust::given, {}}}, {"lamp", {lamp, model::Trust::given, {}}}},
                    {planner.desk.tables, planner.figures});
  for (const bench::Output& output : result.outputs) {
    if (output.name.rfind(kCandidate, 0) != 0 || output.name.substr(kCandidate.size()) == cell.id) continue;
    const bool draws_much = module != nullptr && module->lamp == model::Lamp::display_itself;
    const bool does = output.printed.rfind("use", 0) == 0 || (!draws_much && output.printed.rfind("with care", 0) == 0);
    if (does && need.instead.size() < 2) need.instead.push_back(output.label + ", " + output.printed);
  }
}

void add_cell(Planner& planner, const std::string& reference, int count) {
  const model::Cell* cell = planner.desk.cell(reference);
  if (cell == nullptr) return;
  PlanNeed need;
  need.record = reference;
  need.count = count;
  need.words = planner.desk.name(reference) + size_of(planner.desk, *cell) + system_words(*cell);
  add_instead(planner, *cell, need);
  planner.plan.needs.push_back(std::move(need));
}

/// The first cell that a calculator would put in the place, an alkaline one last: it leaks, and may have come in for a silver
/// one.
std::string first_choice(const Planner& planner, bench::Inputs inputs) {
  inputs.emplace("lamp", bench::Given{"yes", model::Trust::given, {}});
  std::string alkaline;
  for (const bench::Output& output : bench::reckon("cell-swap", inputs, {planner.desk.tables, planner.figures}).outputs) {
    if (output.name.rfind(kCandidate, 0) != 0 || output.printed.rfind("use", 0) != 0) continue;
    const std::string reference = "cell/" + output.name.substr(kCandidate.size());
    const model::Cell* cell = planner.desk.cell(reference);
    if (cell != nullptr && cell->system != "alkaline") return reference;
    if (alkaline.empty()) alkaline = reference;
  }
  return alkaline;
}

/// Without a module the cells that were found say what goes in, each by its size and system, else the size that was measured.
void add_cells_by_old_ones(Planner& planner) {
  const model::Watch& watch = planner.watch;
  std::map<std::string, int> chosen;
  for (const std::string& cell : watch.cells_found)
    ++chosen[first_choice(planner, {{"cell", {Planner::id_of(cell), model::Trust::given, {}}}})];
  const auto& size = watch.cell_size;
  if (watch.cells_found.empty() && size && is_known(size->diameter) && is_known(size->height)) {
    chosen[first_choice(planner, {{"diameter", {base::terminal(*size->diameter), model::Trust::given, {}}},
                                  {"height", {base::terminal(*size->height), model::Trust::given, {}}}})] = 1;
  }
  for (const auto& [cell, count] : chosen) add_cell(planner, cell, std::max(count, chosen.size() == 1 ? watch.cell_count : 1));
}

void add_cells(Planner& planner) {
  const model::Module* module = planner.module();
  if (module == nullptr) return add_cells_by_old_ones(planner);
  const model::References cells = planner.cells();
  if (cells.empty()) return;
  add_cell(planner, cells.front(), module->cell_count);
  for (std::size_t i = 1; i < cells.size() && !planner.plan.needs.empty(); ++i) {
    const model::Cell* cell = planner.desk.cell(cells[i]);
    if (cell == nullptr) continue;
    auto& instead = planner.plan.needs.back().instead;
    instead.push_back("in a well of its size " + planner.desk.name(cells[i]) + size_of(planner.desk, *cell));
  }
}

/// Whether the drawer holds a size of a series, and all of it too old.
bool is_past_in_drawer(const Planner& planner, const std::string& series, const std::string& size) {
  if (planner.drawer == nullptr) return false;
  bool any = false;
  for (const model::Stock::Item& item : planner.drawer->items) {
    if (item.item != series || item.count == 0 || !item.size || base::printed(*item.size) != size) continue;
    if (!is_past(planner, item)) return false;
    any = true;
  }
  return any;
}

void add_gasket(Planner& planner) {
  if (planner.gasket_sizes.empty()) return;
  PlanNeed need;
  need.record = planner.series();
  need.size = planner.gasket_sizes.front();
  need.words = planner.desk.name(need.record) + ", inside " + need.size;
  const auto series = planner.desk.records.gaskets.find(Planner::id_of(need.record));
  if (series != planner.desk.records.gaskets.end()) {
    if (is_known(series->second.wall)) need.words += ", " + base::printed(*series->second.wall) + " wide";
    if (!series->second.material.empty()) need.words += ", " + planner.desk.name(series->second.material);
  }
  for (std::size_t i = 1; i < planner.gasket_sizes.size(); ++i) {
    const std::string& size = planner.gasket_sizes[i];
    const bool past = is_past_in_drawer(planner, need.record, size);
    need.instead.push_back("inside " + size +
                           (past ? ", to order: the one in the drawer is past its shelf life and goes to the waste"
                                 : ", within the band, further from the best"));
  }
  planner.plan.needs.push_back(std::move(need));
}

/// Without a seat the old gasket tells what to have at hand, and the seat then chooses.
void add_gasket_by_old_one(Planner& planner) {
  const model::Fact* size = planner.fact("gasket-fit.size");
  if (!planner.gasket_sizes.empty() || size == nullptr) return;
  PlanNeed need;
  need.record = planner.series();
  need.words = planner.desk.name(need.record) + ", inside " + size->printed;
  planner.plan.needs.push_back(std::move(need));
}

void add_new_crystal(Planner& planner) {
  const model::Crystal* crystal = planner.crystal();
  if (crystal == nullptr || !planner.too_thin) return;
  PlanNeed need;
  need.record = crystal->reference();
  need.words = planner.desk.name(crystal->reference());
  need.size = planner.watch.crystal_size && is_known(planner.watch.crystal_size->diameter)
                  ? base::printed(*planner.watch.crystal_size->diameter)
                  : std::string();
  if (!need.size.empty()) need.words += ", about " + need.size + " across";
  if (is_known(crystal->oversize)) need.note = "measure the bare seat and add " + base::printed(*crystal->oversize);
  planner.plan.needs.push_back(std::move(need));
}

/// Old bars are not fitted again.
void add_spring_bars(Planner& planner) {
  const int job = number_of_job(planner, "procedure/fit-spring-bars");
  if (job == 0) return;
  PlanNeed need;
  need.record = "part/spring-bar";
  need.count = 2;
  need.words = planner.desk.name(need.record);
  if (is_known(planner.watch.lug_width)) {
    need.size = base::printed(*planner.watch.lug_width);
    need.words += ", for lugs of " + need.size;
  }
  need.note = "body and tip as measured in " + std::to_string(job);
  planner.plan.needs.push_back(std::move(need));
}

void add_papers(Planner& planner) {
  for (const std::string& grade : planner.rungs) {
    PlanNeed need;
    need.record = scale_of(grade);
    need.size = grade;
    need.used_up = false;
    need.words = "wet-and-dry paper " + grade;
    planner.plan.needs.push_back(std::move(need));
  }
}

bool is_needed(const Plan& plan, const std::string& record) {
  return std::any_of(plan.needs.begin(), plan.needs.end(), [&record](const PlanNeed& need) { return need.record == record; });
}

/// Liquids and tools of the steps that are done.
void add_bench(Planner& planner) {
  model::References tools;
  const auto add = [&planner](const std::string& record) {
    if (is_needed(planner.plan, record) || planner.desk.records.find(record) == nullptr) return;
    PlanNeed need;
    need.record = record;
    need.used_up = false;
    need.words = planner.desk.name(record);
    planner.plan.needs.push_back(std::move(need));
  };
  for (const PlanJob& job : planner.plan.jobs) {
    if (!job.held.empty()) continue;
    for (const auto& step : job.bound.steps) {
      for (const model::RecordRef& liquid : step.with) {
        if (liquid.is(model::Kind::chemistry)) add(liquid);
      }
      tools.insert(tools.end(), step.tools.begin(), step.tools.end());
    }
  }
  for (const std::string& tool : tools) add(tool);
  if (asks_groove(planner)) add("tool/putty");
}

/// What the test of a new cell needs beside those that go in: one more of their packet, and one to hold it against.
void add_test_cells(Planner& planner) {
  if (number_of_job(planner, "procedure/test-the-new-cell") == 0) return;
  auto& needs = planner.plan.needs;
  const auto fitted =
      std::find_if(needs.begin(), needs.end(), [&](const auto& need) { return planner.desk.cell(need.record) != nullptr; });
  if (fitted == needs.end()) return;
  const bool has_spare = fitted->in_drawer > fitted->count;
  if (planner.drawer != nullptr && !has_spare) {  // the test of another packet says nothing of these
    if (fitted->in_drawer > 0) fitted->note = "all out of one packet: those in the drawer are not mixed in";
    fitted->in_drawer = 0;
    fitted->place.clear();
  }
  const std::string record = fitted->record;
  const auto add = [&](const char* words, bool there) {
    PlanNeed need;
    need.record = record;
    need.for_test = true;
    need.words = planner.desk.name(record) + ", " + words;
    need.in_drawer = there ? 1 : 0;
    needs.push_back(std::move(need));
  };
  add("one more of the same packet, for the test, not fitted", has_spare);
  add("one of another packet with SR on its can, to hold it against, not fitted", false);  // no drawer tells packets apart
}

/// Counts what the drawer holds of each.
void look_into_drawer(Planner& planner) {
  if (planner.drawer == nullptr) return;
  for (PlanNeed& need : planner.plan.needs) {
    for (const model::Stock::Item& item : planner.drawer->items) {
      if (item.item != need.record || item.count == 0 || is_past(planner, item)) continue;
      const std::string size = item.size ? base::printed(*item.size) : item.grade;
      if (!need.size.empty() && size != need.size) continue;
      need.in_drawer += item.count;
      need.place += (need.place.empty() ? "" : "; ") + item.place;
    }
  }
}

}  // namespace

void Planner::add_needs() {
  add_cells(*this);
  add_gasket(*this);
  add_gasket_by_old_one(*this);
  add_new_crystal(*this);
  add_spring_bars(*this);
  add_papers(*this);
  add_bench(*this);
  look_into_drawer(*this);
  add_test_cells(*this);
}

}  // namespace benchleaf::compose
