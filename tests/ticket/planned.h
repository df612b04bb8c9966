// In: a watch. Out: its plan by the records of the handbook, and what a test asks of a plan.
#pragma once

#include <algorithm>
#include <string>

#include "base/quantity.h"
#include "compose/real_book.h"
#include "ticket/plan.h"

namespace benchleaf::test {

inline compose::Plan plan_of(const model::Watch& watch, const model::Stock* drawer, report::Findings& findings) {
  const auto& made = real_book();
  return compose::make_plan(made.records, made.tables, made.derived, watch, drawer, findings);
}

inline const model::Stock& drawer_of_demonstration() { return real_book().records.stocks.at("quillfen-drawer"); }

inline std::string words_of(const compose::Plan& plan) {
  std::string words;
  for (const auto& section : plan.sections) {
    for (const auto& line : section.lines) words += model::plain_text(line.runs) + "\n";
  }
  return base::to_terminal(words);
}

inline const compose::PlanSection* section_of(const compose::Plan& plan, const std::string& id) {
  const auto found = std::find_if(plan.sections.begin(), plan.sections.end(), [&id](const auto& one) { return one.id == id; });
  return found == plan.sections.end() ? nullptr : &*found;
}

inline const compose::PlanNeed* need_of(const compose::Plan& plan, const std::string& record) {
  const auto found =
      std::find_if(plan.needs.begin(), plan.needs.end(), [&record](const auto& one) { return one.record == record; });
  return found == plan.needs.end() ? nullptr : &*found;
}

inline std::string messages(const report::Findings& findings) {
  std::string text;
  for (const auto& finding : findings.all())
    text += std::string(report::rule_info(finding.rule).id) + ": " + finding.message + "\n";
  return text;
}

}  // namespace benchleaf::test
