#pragma once

#include "compose/desk.h"
#include "derive/derive.h"
#include "model/book.h"
#include "model/knowledge_base.h"
#include "model/tables.h"
#include "report/finding.h"

namespace benchleaf::compose {

/// Records, tables and facts to the handbook for the screen or for paper: cover notes, the chapters of handbook.yaml with one
/// entry for each record, the index. Paper is shorter: it says in tables what the screen has entries for, names sources by
/// number, and leaves out who names whom and the chapters of the screen. A derived block that asks for nothing known is a
/// finding.
model::Book make_book(const model::KnowledgeBase& records, const model::Tables& tables, const derive::Derived& derived,
                      Medium medium, report::Findings& findings);

/// Whether every fenced block `bench` of every page can be made, on screen and on paper; each one that cannot is a finding at
/// its line.
void check_blocks(const model::KnowledgeBase& records, const model::Tables& tables, const derive::Derived& derived,
                  report::Findings& findings);

}  // namespace benchleaf::compose
