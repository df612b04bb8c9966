#pragma once

#include "model/fact.h"

namespace benchleaf::model {
struct KnowledgeBase;
struct Tables;
}  // namespace benchleaf::model

namespace benchleaf::derive {

/// What calculators look up in records: the stated facts of the kinds that they name, and beside them titles and
/// references, which are no facts of the handbook: `residue/ID#made-of.0.substance` is printed as `substance/ID`.
model::FactBase bench_figures(const model::KnowledgeBase& base, const model::Tables& tables);

}  // namespace benchleaf::derive
