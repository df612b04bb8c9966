#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "bench/calculator.h"
#include "bench/step_checker.h"
#include "compose/desk.h"
#include "compose/line.h"
#include "ticket/plan.h"

namespace benchleaf::compose {

using Words = std::vector<std::pair<std::string, std::string>>;

/// A liquid for a residue, and the name of its facts.
struct PlannedDose {
  std::string name;  ///< `crust-dose`
  std::string residue;
  std::string liquid;
};

/// A plan under construction: what it is made from, and what is known so far.
struct Planner {
  const Desk& desk;
  const model::FactBase& figures;  ///< what calculators look up in records
  const model::Watch& watch;
  const model::Stock* drawer;
  bool drawer_is_whole;  ///< false: what lies ready by the watch itself, which is silent of the rest
  Plan plan;
  std::vector<std::string> cautions_said;

  const model::Module* module() const;
  /// Where it is not known: those that it may be by what shows the time. Those of the demonstration are no guess.
  std::vector<const model::Module*> modules() const;
  /// What the module takes, by the cells that were found or measured; more than one where these do not tell.
  model::References cells() const;
  const model::Crystal* crystal() const;
  /// Where the record is not known, by what was seen: those that it may be, or empty.
  model::References residues() const;
  /// Whether a crust that is known by its colour alone may be of lithium, which bears no water, or of a cell whose leak needs it.
  bool may_bear_no_water() const;
  std::string crystal_material() const;  ///< `material/acrylic`
  std::string series() const;            ///< `gasket/round-0-7`
  std::string display() const;           ///< lcd, led, hands
  /// `round-0-7` of `gasket/round-0-7`.
  static std::string id_of(const std::string& reference) { return reference.substr(reference.find('/') + 1); }

  /// Asks a calculator about this watch; its outputs become facts `watch/ID#NAME.OUTPUT`, where NAME is that of the calculator
  /// unless another is given.
  bench::Result ask(const std::string& calculator, const Words& words, const std::string& name = {});
  const model::Fact* fact(const std::string& name) const { return plan.facts.find(watch.reference() + "#" + name); }

  /// Adds a finding at a place of the watch.
  void find(report::Rule rule, std::string_view path, std::string message, std::string hint);

  Line line() const { return Line(desk); }
  /// `gasket-fit.stretch` as it is printed, with its sign.
  Line& say_fact(Line& line, const std::string& name) const;

  // The parts of make_plan, in their order; each reads what the ones before have put into the plan.
  void add_checks();
  void reckon_gasket();
  void reckon_old_gasket(const std::string& series);
  void reckon_ladder();
  void add_jobs();
  void reckon_doses();
  void reckon_life();
  void add_needs();
  void add_front_sections();
  void add_ready_sections();
  void add_job_sections();
  void add_closing_sections();

  /// The plan's own results that later parts ask for.
  std::vector<std::string> gasket_sizes;  ///< that may sit, the best first
  std::vector<std::string> rungs;         ///< grades of the ladder, coarsest first
  std::string no_ladder;                  ///< why there is no ladder, or empty
  bool too_thin = false;                  ///< whether sanding would leave too little of the crystal
  std::vector<PlannedDose> doses;
};

/// A section that grows line by line.
class SectionMaker {
 public:
  SectionMaker(Planner& planner, std::string id, std::string title)
      : planner_(planner), section_{std::move(id), std::move(title), {}} {}
  void tick(Line& line);
  void tick(std::string words);
  void words(Line& line);
  void words(std::string words);
  void step(model::Runs runs);
  void caution(const std::string& record);
  bool empty() const { return section_.lines.empty(); }
  /// Puts it into the plan unless it stayed empty.
  void close();

 private:
  Planner& planner_;
  PlanSection section_;
};

/// Whether a gasket of the drawer is older than its rubber keeps, on the day of the count.
bool is_past(const Planner& planner, const model::Stock::Item& item);
/// Puts a text into a list unless it is empty or there.
template <typename Word>
void add_once(std::vector<Word>& list, const Word& text) {
  if (!text.empty() && std::find(list.begin(), list.end(), text) == list.end()) list.push_back(text);
}
/// Whether a list has a word.
template <typename Word>
bool holds(const std::vector<Word>& list, std::string_view word) {
  return std::find(list.begin(), list.end(), word) != list.end();
}
/// Whether a quantity was measured.
bool is_known(const std::optional<base::Quantity>& quantity);
/// The materials of the case of this watch, those of both kinds of case where it is not known.
model::References case_materials(const model::Watch& watch);
/// Whether a job has a step on a part: `part/spring-bar`.
bool works_on(const Planner& planner, const std::vector<model::Watch::Job>& jobs, const std::string& part);
/// Whether the crystal is of what is sanded, as far as it is known.
bool may_be_sanded(const Planner& planner);
/// Whether the jobs use the depth of a scratch, or the size of the crystal: to sand it, or to change it. Glass is not sanded.
bool uses_scratch(const Planner& planner);
bool uses_crystal_size(const Planner& planner);
/// What is left to do for a scratch that is not polished, with the new crystal's kind and size.
std::string instead_of_polish(const Planner& planner);
/// Whether a job opens the back.
bool opens_back(const PlanJob& job);
/// Whether nobody may open the watch by this sheet, since nobody knows yet how its back is held, or it has none.
bool stays_closed(const Planner& planner);
/// Whether the sheet can name no cell, so that it ends where its size is written down.
bool waits_for_cell(const Planner& planner);
/// Puts what is to be found out into the plan: with the back closed, or with it off.
void add_check_list(Planner& planner, bool back_off);
/// What the calculator makes of the gasket's groove, or how it is measured.
void add_groove(Planner& planner, SectionMaker& section);
/// Whether a procedure, or one of the jobs, polishes the crystal.
bool is_polish(const model::Procedure& procedure);
bool polishes_crystal(const Planner& planner, const std::vector<model::Watch::Job>& jobs);
/// The place of a job on the sheet, from 1; 0 where it is not done.
int number_of_job(const Planner& planner, const char* procedure);
/// `alkaline cell bought after 2016`: a leak that holds no mercury, by the table of years; empty without it.
std::string young_leak(const Planner& planner);
/// Lines for what the module draws, beside what is healthy, and for the cell's voltage in its place.
void add_measured(Planner& planner, SectionMaker& section);
/// What lies ready by the watch itself, as a drawer; nothing where it does not say.
std::optional<model::Stock> drawer_of(const model::Watch& watch);
/// `abrasive/fepa-p` of `P800`.
std::string scale_of(const std::string& grade);
/// Whether the sheet asks for the depth of the gasket's groove.
bool asks_groove(const Planner& planner);
/// What stands for the crystal in steps that name a part; nothing known counts as the kind that bears least.
std::string crystal_part(const Planner& planner, const std::string& named);
/// The procedures that the watch names, else those that are usual for what is known of it.
std::vector<model::Watch::Job> jobs_of(const Planner& planner);
/// Those that can be done by this sheet: the usual ones end where the watch must be planned again.
std::vector<model::Watch::Job> jobs_of_sheet(const Planner& planner);

}  // namespace benchleaf::compose
