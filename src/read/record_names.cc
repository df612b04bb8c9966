// In: the names of all files and their aliases, and words that name records. Out: which record each word means.
#include "read/record_names.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace benchleaf::read {

void RecordNames::add_alias(const model::RecordRef& alias, const model::RecordRef& reference) {
  if (known_.find(alias) == known_.end()) aliases_.emplace(alias, reference);
}

model::RecordRef RecordNames::named(const model::RecordRef& reference) const {
  if (known_.find(reference) != known_.end()) return reference;
  auto alias = aliases_.find(reference);
  return alias == aliases_.end() ? model::RecordRef() : alias->second;
}

model::ReferencePlace RecordNames::resolve(FoundReference found) const {
  model::ReferencePlace reference{std::move(found.path), std::move(found.text), {}, found.span, {}, std::move(found.fact)};
  for (const std::string& name : found.kinds) {
    if (std::optional<model::Kind> kind = model::kind_from_name(name)) reference.kinds.push_back(*kind);
  }
  if (const model::RecordRef whole(reference.text); whole.kind()) {
    const std::vector<model::Kind>& kinds = reference.kinds;
    bool allowed = kinds.empty() || std::find(kinds.begin(), kinds.end(), *whole.kind()) != kinds.end();
    if (allowed) reference.target = named(whole);
    return reference;
  }
  int fitting = 0;
  for (model::Kind kind : reference.kinds) {
    model::RecordRef target = named({kind, reference.text});
    if (target.empty()) continue;
    ++fitting;
    reference.target = std::move(target);
  }
  if (fitting > 1) reference.target = {};
  return reference;
}

}  // namespace benchleaf::read
