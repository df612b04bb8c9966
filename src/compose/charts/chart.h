#pragma once

#include <vector>

#include "derive/derive.h"
#include "model/knowledge_base.h"
#include "model/sheet.h"
#include "model/tables.h"
#include "report/finding.h"

namespace benchleaf::compose {

/// A sheet for each chart record, in order of ids: its panels filled from records and facts. A panel that nothing fills is
/// a finding.
std::vector<model::SheetSet> make_charts(const model::KnowledgeBase& records, const model::Tables& tables,
                                         const derive::Derived& derived, report::Findings& findings);

}  // namespace benchleaf::compose
