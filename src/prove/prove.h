#pragma once

#include "derive/derive.h"
#include "model/knowledge_base.h"
#include "model/tables.h"
#include "report/finding.h"

namespace benchleaf::prove {

/// Holds what is stated against the tables and against what was derived. Nothing is worked out here; every rule passes over
/// fields that could not be read.
void prove(const model::KnowledgeBase& base, const model::Tables& tables, const derive::Derived& derived,
           report::Findings& findings);

}  // namespace benchleaf::prove
