// In: a watch. Out: its plan and its sheets by the records of the handbook, and what a test asks of them.
#pragma once

#include <algorithm>
#include <string>

#include "base/quantity.h"
#include "compose/real_book.h"
#include "ticket/plan.h"
#include "ticket/plan_text.h"
#include "ticket/sheets.h"

namespace benchleaf::test {

inline ticket::Bench bench_of(const model::Watch& watch, const model::Stock* drawer = nullptr, ticket::Judges judges = {}) {
  const auto& made = real_book();
  return {made.records, made.tables, made.derived, watch, drawer, judges};
}

inline ticket::Plan plan_of(const model::Watch& watch, const model::Stock* drawer, report::Findings& findings) {
  return ticket::make_plan(bench_of(watch, drawer), findings);
}

inline const model::Stock& drawer_of_demonstration() { return real_book().records.stocks.at("quillfen-drawer"); }

inline const model::Watch& demonstration(const std::string& id) { return real_book().records.watches.at(id); }

inline model::RecordRef procedure(const char* id) { return {model::Kind::procedure, id}; }

/// A job of the plan by the id of its procedure.
inline const ticket::PlanJob* job_of(const ticket::Plan& plan, const char* id) { return plan.job(procedure(id)); }

inline bool is_done(const ticket::Plan& plan, const char* id) { return plan.number_of(procedure(id)) > 0; }

inline bool is_held(const ticket::Plan& plan, const char* id) {
  const ticket::PlanJob* job = job_of(plan, id);
  return job != nullptr && job->state == ticket::PlanJob::State::held;
}

inline base::Quantity quantity(const std::string& text) { return std::get<base::Quantity>(base::parse_quantity(text)); }

/// A watch of the bench of which nothing is known yet.
inline model::Watch bare_watch(const std::string& id) {
  model::Watch watch;
  watch.kind = model::Kind::watch;
  watch.id = id;
  watch.title = "A watch on the bench";
  return watch;
}

}  // namespace benchleaf::test
