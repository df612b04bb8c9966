// In: the names of all files and their aliases, and words that name records. Out: which record each word means.
#include "read/record_names.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace benchleaf::read {

void RecordNames::add_alias(const std::string& alias, const std::string& reference) {
  if (known_.find(alias) == known_.end()) aliases_.emplace(alias, reference);
}

std::string RecordNames::named(const std::string& reference) const {
  if (known_.find(reference) != known_.end()) return reference;
  auto alias = aliases_.find(reference);
  return alias == aliases_.end() ? std::string() : alias->second;
}

model::Reference RecordNames::resolve(FoundReference found) const {
  model::Reference reference{std::move(found.path), std::move(found.text), {}, found.span, {}, std::move(found.fact)};
  for (const std::string& name : found.kinds) {
    if (std::optional<model::Kind> kind = model::kind_from_name(name)) reference.kinds.push_back(*kind);
  }
  if (auto parts = model::split_reference(reference.text)) {
    const std::vector<model::Kind>& kinds = reference.kinds;
    bool allowed = kinds.empty() || std::find(kinds.begin(), kinds.end(), parts->first) != kinds.end();
    if (allowed) reference.target = named(reference.text);
    return reference;
  }
  int fitting = 0;
  for (model::Kind kind : reference.kinds) {
    std::string target = named(std::string(model::kind_name(kind)) + "/" + reference.text);
    if (target.empty()) continue;
    ++fitting;
    reference.target = std::move(target);
  }
  if (fitting > 1) reference.target.clear();
  return reference;
}

}  // namespace benchleaf::read
