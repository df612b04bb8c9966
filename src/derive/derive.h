#pragma once

#include <string>

#include "derive/relations.h"
#include "model/fact.h"
#include "report/finding.h"

namespace benchleaf::model {
struct KnowledgeBase;
struct Record;
struct Tables;
}  // namespace benchleaf::model

namespace benchleaf::derive {

/// Everything the records and tables say and everything that follows from them.
struct Derived {
  model::FactBase facts;
  Relations relations;
};

/// Knowledge base and tables to facts: stated facts, table rows, derived facts, in a stable order.
Derived derive(const model::KnowledgeBase& base, const model::Tables& tables, report::Findings& findings);

/// What one record states: every quantity, number and code word of it, by path.
void add_stated_facts(const model::Record& record, model::FactBase& facts);

/// facts.jsonl: one fact a line, in the order of the fact base, UTF-8, `\n` after each; `overlay` only where one has the
/// record.
std::string facts_jsonl(const model::FactBase& facts);

}  // namespace benchleaf::derive
