#pragma once

#include "derive/derive.h"
#include "model/book.h"
#include "model/knowledge_base.h"
#include "model/tables.h"
#include "report/finding.h"

namespace benchleaf::compose {

/// Records, tables and facts to the handbook: cover notes, the chapters of handbook.yaml with one entry for each record,
/// the index. A derived block that asks for nothing known is a finding.
model::Book make_book(const model::KnowledgeBase& records, const model::Tables& tables, const derive::Derived& derived,
                      report::Findings& findings);

}  // namespace benchleaf::compose
