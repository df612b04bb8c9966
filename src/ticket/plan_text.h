#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "model/knowledge_base.h"
#include "ticket/sheets.h"

namespace benchleaf::ticket {

/// The ticket for the terminal: a head a section, `[ ]` before what is to be done, lines of 80 columns.
std::string sheets_text(const Plan& plan, const Sheets& sheets, const model::KnowledgeBase& records);
/// One line of it as one text.
std::string line_text(const SheetLine& line, const model::KnowledgeBase& records);
/// The list that several watches share, or one line where nothing is wanted.
std::string order_text(const compose::Desk& desk, const std::vector<PlanNeed>& list, std::size_t watches);

}  // namespace benchleaf::ticket
