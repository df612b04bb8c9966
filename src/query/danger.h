#pragma once

#include <vector>

#include "model/knowledge_base.h"
#include "model/tables.h"
#include "query/vocabulary.h"

namespace benchleaf::query {

/// Records that are read before anything else, by the table danger-words.
struct Dangers {
  std::vector<const model::Record*> first;   ///< somebody may be hurt: they are the answer
  std::vector<const model::Record*> before;  ///< they stand before the answer
};

/// The rows of the table of which a query has every word, those of the most words first.
Dangers dangers_in(const std::vector<Word>& words, const Vocabulary& vocabulary, const model::KnowledgeBase& records,
                   const model::Tables& tables);

}  // namespace benchleaf::query
