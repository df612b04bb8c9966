// In: a name as it was typed, the facts of the records. Out: the record it means, or the names near it.

#include "bench/names.h"

#include <algorithm>

#include "base/ascii.h"
#include "base/id.h"
#include "model/record_ref.h"

namespace benchleaf::bench {
namespace {

constexpr std::size_t kMostNames = 20;  // more are no hint

std::string printed(const model::FactBase& facts, const std::string& id) {
  const model::Fact* fact = facts.find(id);
  return fact == nullptr ? std::string() : fact->printed;
}

bool is_named(const model::FactBase& facts, const std::string& cell, const std::string& low) {
  return base::lower_ascii(printed(facts, cell + "#designation")) == low || printed(facts, cell + "#trade-number") == low;
}

}  // namespace

std::vector<std::string> records_of(const model::FactBase& facts, std::string_view kind) {
  std::vector<std::string> list;
  const auto wanted = model::kind_from_name(kind);
  for (const auto& fact : facts.all()) {
    const model::FactId id(fact.id);
    if (!wanted || id.kind() != wanted) continue;
    std::string record(id.record);
    if (std::find(list.rbegin(), list.rend(), record) == list.rend()) list.push_back(std::move(record));
  }
  return list;
}

Resolution FactNames::resolve(std::string_view text, const std::vector<std::string>& kinds) const {
  const std::string low = base::lower_ascii(std::string(text));
  std::vector<std::string> ids;
  for (const auto& kind : kinds) {
    for (const auto& record : records_of(facts_, kind)) {
      const std::string id = model::RecordRef(record).id();
      if (low == id || low == record || (kind == "cell" && is_named(facts_, record, low)))
        return {Resolution::State::found, record, {}, {}};
      ids.push_back(id);
    }
  }
  Resolution unknown;
  const bool cells = std::find(kinds.begin(), kinds.end(), "cell") != kinds.end();
  // One letter apart lies another system of cells: no hint is better than one that is bought.
  const std::string nearest = cells ? std::string() : base::nearest_word(low, ids);
  if (!nearest.empty()) unknown.hints = {nearest};
  if (nearest.empty() && ids.size() <= kMostNames) unknown.hints = ids;
  return unknown;
}

}  // namespace benchleaf::bench
