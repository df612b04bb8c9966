#pragma once

#include <string>
#include <vector>

#include "ticket/plan.h"
#include "ticket/sheets.h"

namespace benchleaf::command {

/// {watch, title, drawer, checks: [{field, what, how}], needs: [...], jobs: [{procedure, held}], sections: [{id, title,
/// lines: [{kind, text, record}]}], facts: [{id, printed, value, low, high, unit, trust}], order: [...]}; `order` stands there
/// where several watches were named.
std::string plan_json(const ticket::Plan& plan, const ticket::Sheets& sheets, const compose::Desk& desk,
                      const std::vector<ticket::PlanNeed>* order);

}  // namespace benchleaf::command
