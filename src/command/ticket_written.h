#pragma once

#include <string>
#include <vector>

#include "compose/ticket/plan.h"
#include "model/knowledge_base.h"

namespace benchleaf::command {

/// The plan for the terminal: a head a section, `[ ]` before what is to be done, lines of 80 columns.
std::string plan_text(const compose::Plan& plan, const model::KnowledgeBase& records);
/// One line of it as one text.
std::string line_text(const compose::PlanLine& line, const model::KnowledgeBase& records);
/// The list that several watches share, or one line where nothing is wanted.
std::string order_text(const std::vector<compose::PlanNeed>& list, std::size_t watches);

/// {watch, title, drawer, checks: [{field, what, how}], needs: [...], jobs: [{procedure, held}], sections: [{id, title,
/// lines: [{kind, text, record}]}], facts: [{id, printed, value, low, high, unit, trust}], order: [...]}; `order` stands there
/// where several watches were named.
std::string plan_json(const compose::Plan& plan, const model::KnowledgeBase& records,
                      const std::vector<compose::PlanNeed>* order);

}  // namespace benchleaf::command
