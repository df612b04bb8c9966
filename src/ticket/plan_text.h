#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "model/knowledge_base.h"
#include "ticket/plan.h"

namespace benchleaf::compose {

/// The plan for the terminal: a head a section, `[ ]` before what is to be done, lines of 80 columns.
std::string plan_text(const Plan& plan, const model::KnowledgeBase& records);
/// One line of it as one text.
std::string line_text(const PlanLine& line, const model::KnowledgeBase& records);
/// The list that several watches share, or one line where nothing is wanted.
std::string order_text(const std::vector<PlanNeed>& list, std::size_t watches);

}  // namespace benchleaf::compose
