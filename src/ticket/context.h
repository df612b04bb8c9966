#pragma once

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "bench/calculator.h"
#include "bench/step_checker.h"
#include "compose/desk.h"
#include "model/marks.h"
#include "ticket/plan.h"

namespace benchleaf::ticket {

using model::Mark;
using model::RecordRef;
using model::References;

/// Marks of one watch, as conditions ask for them.
using Marks = std::set<Mark>;

/// What a plan is made from, and what is seen of the watch where its record does not say.
struct Context {
  const compose::Desk& desk;
  const model::FactBase& figures;  ///< what calculators look up in records
  const model::Watch& watch;
  const model::Stock* drawer;
  bool drawer_is_whole;  ///< false: what lies ready by the watch itself, which is silent of the rest
  Judges judges = {};

  bench::StepWorld world() const { return {desk.records, desk.tables}; }
  const model::Module* module() const;
  /// Where it is not known: those that it may be by what shows the time. Those of the demonstration are no guess.
  std::vector<const model::Module*> modules() const;
  const model::Crystal* crystal() const;
  std::string display() const;  ///< lcd, led, hands, or empty
  int wells() const;            ///< cells that it takes; 0 where nobody knows
  /// Whether its cell feeds a lamp, an alarm or a lit display; nothing where nobody knows.
  std::optional<bool> draws_much() const;
  /// `material/acrylic`, by its record or by what was seen; empty where nobody knows.
  RecordRef crystal_material() const;
  RecordRef series() const;  ///< `gasket/round-0-7`
  /// Where the record is not known, by what was seen: those that it may be, or empty.
  References residues() const;
  /// Parts and materials of the case; the parts that stand for a case where it is not known.
  References case_materials() const;
  /// What stands for the crystal in a step that names a part; nothing known counts as the kind that bears least.
  RecordRef crystal_part(const RecordRef& named) const;
  /// The parts of a role: `case`, `spring-bar`.
  References parts_of(std::string_view role) const;
  bool has_role(const RecordRef& part, std::string_view role) const;
};

using Words = std::vector<std::pair<std::string, std::string>>;
/// Asks a calculator about this watch.
bench::Result ask(const Context& context, std::string_view calculator, const Words& words);

/// What conditions ask of a watch, before any job is planned.
Marks marks_of(const Context& context);
/// Puts the one word of a trait in the place of those that stand there.
void set_mark(Marks& marks, Mark mark);
bool holds(const Context& context, const Marks& marks, const model::Condition& condition);
/// Whether one of them holds; `otherwise` where there is none.
bool any_holds(const Context& context, const Marks& marks, const std::vector<model::Condition>& conditions, bool otherwise);

/// Whether a list has a word or a record.
template <typename List, typename Value>
bool has(const List& list, const Value& value) {
  for (const auto& one : list) {
    if (one == value) return true;
  }
  return false;
}
/// Puts a thing into a list unless it is empty or there.
template <typename List, typename Value>
void add_once(List& list, const Value& value) {
  if (!value.empty() && !has(list, value)) list.push_back(value);
}
/// Whether a quantity was measured.
bool is_known(const std::optional<base::Quantity>& quantity);
/// What lies ready by the watch itself, as a drawer; nothing where it does not say.
std::optional<model::Stock> drawer_of(const Context& context);
/// The same where no drawer was named.
std::optional<model::Stock> ready_stock(const compose::Desk& desk, const model::FactBase& figures, const Bench& bench);
/// Whether a gasket of the drawer is older than its rubber keeps, on the day of the count.
bool is_past(const Context& context, const model::Stock::Item& item);
/// Whether the drawer speaks of things of a kind: one that was counted speaks of all, what lies ready of what it names.
bool lists(const Context& context, model::Kind kind);
/// The abrasive that has a grade, or empty.
RecordRef scale_of(const Context& context, const std::string& grade);

}  // namespace benchleaf::ticket
