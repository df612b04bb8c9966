// In: the measures of a watch, the drawer. Out: what the calculators say of gasket, ladder, dose and life, as facts of the plan;
// where the answer and the drawer do not agree, a finding at the measure.
#include <algorithm>

#include "base/number.h"
#include "base/quantity.h"
#include "ticket/planner.h"

namespace benchleaf::compose {

namespace {

constexpr const char* kCrust = "10 mg";  // common practice of the bench, no source: a heap of about 2 mm each way
constexpr std::string_view kFurther = ": ";

/// Months of `2023-05`; 0 where there is none.
int months_of(const std::string& date) {
  if (date.size() < 7) return 0;
  return std::stoi(date.substr(0, 4)) * 12 + std::stoi(date.substr(5, 2));
}

/// What lies in the drawer of a series, for a finding: `27 mm`, `27.5 mm (past its shelf life)`.
std::string sizes_at_hand(const Planner& planner, const std::string& series) {
  std::string text;
  for (const model::Stock::Item& item : planner.drawer->items) {
    if (item.item != series || item.count == 0 || !item.size) continue;
    text += (text.empty() ? "" : ", ") + base::terminal(*item.size) + (is_past(planner, item) ? " (past its shelf life)" : "");
  }
  return text.empty() ? "none" : text;
}

/// Whether the drawer speaks of things of a kind: one that was counted speaks of all, what lies ready of what it names.
bool lists(const Planner& planner, const std::string& kind) {
  if (planner.drawer == nullptr || planner.drawer_is_whole) return planner.drawer != nullptr;
  const auto& items = planner.drawer->items;
  return std::any_of(items.begin(), items.end(), [&kind](const auto& item) { return item.item.text().rfind(kind, 0) == 0; });
}

bool fits_one_at_hand(const Planner& planner, const std::string& series) {
  return std::any_of(planner.drawer->items.begin(), planner.drawer->items.end(), [&](const model::Stock::Item& item) {
    if (item.item != series || item.count == 0 || !item.size || is_past(planner, item)) return false;
    const std::string size = base::printed(*item.size);
    return std::find(planner.gasket_sizes.begin(), planner.gasket_sizes.end(), size) != planner.gasket_sizes.end();
  });
}

/// Grades in the drawer, each once.
std::vector<std::string> grades_at_hand(const model::Stock& drawer) {
  std::vector<std::string> grades;
  for (const model::Stock::Item& item : drawer.items) {
    const bool paper = item.item.is(model::Kind::abrasive) && item.count > 0 && !item.grade.empty();
    if (paper && std::find(grades.begin(), grades.end(), item.grade) == grades.end()) grades.push_back(item.grade);
  }
  return grades;
}

/// `P800, P1500, then polish` to its grades.
std::vector<std::string> rungs_of(const std::string& ladder) {
  std::vector<std::string> rungs;
  std::string rest = ladder.substr(0, ladder.find(", then"));
  while (!rest.empty()) {
    const std::size_t comma = std::min(rest.find(", "), rest.size());
    rungs.push_back(rest.substr(0, comma));
    rest = rest.substr(std::min(comma + 2, rest.size()));
  }
  return rungs;
}

}  // namespace

bool is_past(const Planner& planner, const model::Stock::Item& item) {
  const auto gasket = planner.desk.records.gaskets.find(Planner::id_of(item.item));
  if (gasket == planner.desk.records.gaskets.end()) return false;
  const auto material = planner.desk.records.materials.find(Planner::id_of(gasket->second.material));
  if (material == planner.desk.records.materials.end() || !is_known(material->second.shelf_life)) return false;
  const auto years = material->second.shelf_life->value_in(base::Unit::year);
  const int made = months_of(item.made);
  const int counted = months_of(planner.drawer->date);
  return years && made > 0 && counted > 0 && counted - made > *years * 12;
}

void Planner::reckon_old_gasket(const std::string& series) {
  if (!is_known(watch.old_gasket.inside)) return;
  ask("gasket-fit", {{"series", id_of(series)}, {"old-inside", base::terminal(*watch.old_gasket.inside)}});
}

void Planner::reckon_gasket() {
  const std::string series = this->series();
  if (series.empty()) return;
  if (!is_known(watch.gasket_seat)) return reckon_old_gasket(series);
  const std::string seat = base::terminal(*watch.gasket_seat);
  Words words = {{"series", id_of(series)}, {"seat", seat}};
  if (is_known(watch.groove.depth)) words.emplace_back("groove-depth", base::terminal(*watch.groove.depth));
  if (is_known(watch.groove.depth) && is_known(watch.groove.width))
    words.emplace_back("groove-width", base::terminal(*watch.groove.width));
  const bench::Result result = ask("gasket-fit", words);
  if (result.refusal) {
    find(report::Rule::ticket_gasket, "gasket-seat", "no gasket can be chosen: " + result.refusal->reason,
         "measure the seat again, in three directions, and look at the series");
    return;
  }
  if (result.find("size") == nullptr) {
    find(report::Rule::ticket_gasket, "gasket-seat", "no size of " + id_of(series) + " sits on a seat of " + seat,
         "measure the seat again, in three directions, and look for another series");
    return;
  }
  gasket_sizes.push_back(result.find("size")->printed);
  for (const bench::Output& other : result.outputs) {
    if (other.name != "rejected" || other.printed.find("within the band") == std::string::npos) continue;
    gasket_sizes.push_back(other.printed.substr(0, other.printed.find(kFurther)));
  }
  if (!lists(*this, "gasket/") || fits_one_at_hand(*this, series)) return;
  find(report::Rule::ticket_gasket, "gasket-seat",
       "no gasket on hand fits a seat of " + seat + ": of " + id_of(series) + " there is " + sizes_at_hand(*this, series) +
           ", wanted is " + base::to_terminal(gasket_sizes.front()),
       "order one of " + base::to_terminal(gasket_sizes.front()) + "; the ticket lists it");
}

void Planner::reckon_ladder() {
  if (!polishes_crystal(*this, jobs_of(*this)) || !may_be_sanded(*this)) return;
  const bool measured = watch.crystal_size && is_known(watch.crystal_size->thickness);
  if (!measured || (!is_known(watch.scratch) && watch.nail.empty())) {
    no_ladder = std::string("the ") + (measured ? "depth of the scratch" : "thickness of the crystal") + " is not known";
    return;
  }
  const std::string nail = watch.nail == "catches" ? "nail-catches" : watch.nail;
  Words words = {{"scratch", is_known(watch.scratch) ? base::terminal(*watch.scratch) : nail},
                 {"thickness", base::terminal(*watch.crystal_size->thickness)}};
  if (!crystal_material().empty()) words.emplace_back("material", id_of(crystal_material()));
  const bool disc = is_known(watch.crystal_size->diameter) && !is_known(watch.crystal_size->length);
  if (disc) words.emplace_back("diameter", base::terminal(*watch.crystal_size->diameter));
  if (lists(*this, "abrasive/")) {
    const std::string grades = listed(grades_at_hand(*drawer), ",");
    if (grades.empty()) {
      no_ladder = "there is no graded paper in the drawer";
      find(report::Rule::ticket_grade, "scratch", no_ladder,
           "buy the grades that the ticket lists, or leave the crystal as it is");
      return;
    }
    words.emplace_back("grades", grades);
  }
  const bench::Result result = ask("scratch-ladder", words);
  if (result.refusal) {
    no_ladder = result.refusal->input + " " + result.refusal->reason;
    too_thin = true;
    find(report::Rule::ticket_crystal, "scratch", "no ladder of grades: " + no_ladder,
         "change the crystal instead of sanding it");
    return;
  }
  rungs = rungs_of(result.find("ladder")->printed);
  const bench::Output* holds = result.find("still-holds");
  if (holds == nullptr || holds->printed.rfind("stands", 0) == 0) return;
  no_ladder = "the ladder would leave " + base::to_terminal(result.find("left")->printed) + ", which " +
              base::to_terminal(holds->printed);
  find(report::Rule::ticket_crystal, "crystal-size.thickness", no_ladder, "change the crystal instead of sanding it");
  rungs.clear();
  too_thin = true;
}

void Planner::reckon_doses() {
  for (const std::string& residue : residues()) {
    const auto record = desk.records.residues.find(id_of(residue));
    if (record == desk.records.residues.end()) continue;
    for (const std::string& liquid : record->second.answers) {
      const bool used = std::any_of(plan.jobs.begin(), plan.jobs.end(), [&](const PlanJob& job) {
        const auto& steps = job.bound.steps;
        return job.held.empty() && std::any_of(steps.begin(), steps.end(), [&](const auto& step) {
                 return std::find(step.with.begin(), step.with.end(), liquid) != step.with.end();
               });
      });
      if (!used) continue;
      const std::string name = doses.empty() ? "crust-dose" : "crust-dose." + id_of(residue) + "." + id_of(liquid);
      const Words words = {{"residue", id_of(residue)}, {"mass", kCrust}, {"liquid", id_of(liquid)}};
      if (!ask("crust-dose", words, name).refusal) doses.push_back({name, residue, liquid});
    }
  }
}

void Planner::reckon_life() {
  const model::References taken = cells();
  if (taken.size() == 1) ask("cell-life", {{"cell", id_of(taken.front())}, {"module", id_of(watch.module)}});
}

}  // namespace benchleaf::compose
