#pragma once

#include "bench/names.h"
#include "query/name_index.h"

namespace benchleaf::query {

/// The names of the index as calculators ask for them: a name with several readings is refused, and so is one that none has.
class BenchNames : public bench::Names {
 public:
  BenchNames(const model::KnowledgeBase& records, const model::Tables& tables);
  bench::Resolution resolve(std::string_view text, const std::vector<std::string>& kinds) const override;

 private:
  const model::KnowledgeBase& records_;
  NameIndex index_;
};

}  // namespace benchleaf::query
