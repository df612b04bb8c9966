#pragma once

#include "derive/relations.h"
#include "model/knowledge_base.h"
#include "model/tables.h"

namespace benchleaf::derive {

/// Which cells have one size, as `derive` finds it, without the facts that a look-up does not ask for.
Relations cell_relations(const model::KnowledgeBase& base, const model::Tables& tables);

}  // namespace benchleaf::derive
