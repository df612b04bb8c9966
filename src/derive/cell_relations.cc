// In: the knowledge base. Out: which cells have one size, without the facts that nobody asks for who looks a name up.
#include "derive/cell_relations.h"

#include "derive/makers.h"

namespace benchleaf::derive {

Relations cell_relations(const model::KnowledgeBase& base, const model::Tables& tables) {
  Making making{base, tables, {}, {}};
  for (const auto& [id, cell] : base.cells) add_stated_facts(cell, making.facts);
  make_table_facts(making);
  make_same_size_facts(making);
  return std::move(making.relations);
}

}  // namespace benchleaf::derive
