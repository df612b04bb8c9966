#pragma once

#include <string>
#include <vector>

#include "base/quantity.h"
#include "derive/derive.h"
#include "model/knowledge_base.h"
#include "model/tables.h"

namespace benchleaf::derive {

/// What fact makers share: they read the knowledge base and the tables, and add facts; a later one finds those of an earlier.
struct Making {
  const model::KnowledgeBase& base;
  const model::Tables& tables;
  model::FactBase facts;
  Relations relations;
};

using FactMaker = void (*)(Making&);

// The makers, one file each, in the order in which derive runs them.

/// Every quantity, number and code word of every record.
void make_stated_facts(Making& making);
/// Every cell of every published table.
void make_table_facts(Making& making);
/// What the designation of each cell stands for.
void make_cell_decode_facts(Making& making);
/// How long each cell lasts in a watch that draws little and has no lamp.
void make_cell_life_facts(Making& making);
/// What the parts of each liquid make of its classes and its label.
void make_mixture_class_facts(Making& making);
/// What pages ask of calculators: `page/ID#CALCULATOR.NAME.ROW.OUTPUT`.
void make_page_answer_facts(Making& making);
/// Which cells have the same size, and the families of one size.
void make_same_size_facts(Making& making);

/// A quantity as a fact without provenance: value, ends, unit, printed. Nothing for a text that is no quantity.
bool fill_quantity(model::Fact& fact, std::string_view text);
void fill_quantity(model::Fact& fact, const base::Quantity& quantity);

/// `source/ID, where`: what a fact carries as its source.
std::string source_text(std::string_view source, std::string_view where);

}  // namespace benchleaf::derive
