#pragma once

#include <string>
#include <vector>

#include "model/knowledge_base.h"
#include "ticket/plan.h"

namespace benchleaf::command {

/// {watch, title, drawer, checks: [{field, what, how}], needs: [...], jobs: [{procedure, held}], sections: [{id, title,
/// lines: [{kind, text, record}]}], facts: [{id, printed, value, low, high, unit, trust}], order: [...]}; `order` stands there
/// where several watches were named.
std::string plan_json(const compose::Plan& plan, const model::KnowledgeBase& records,
                      const std::vector<compose::PlanNeed>* order);

}  // namespace benchleaf::command
