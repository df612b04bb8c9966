// In: facts in the order in which derive makes them. Out: the ordered base of facts and the words of the trust marks.
#include "model/fact.h"

#include <algorithm>
#include <array>
#include <utility>

namespace benchleaf::model {

namespace {

constexpr std::array<std::string_view, 7> kTrustNames = {"standard", "handbook", "dataset", "trade",
                                                         "memory",   "invented", "given"};

}  // namespace

std::string_view trust_name(Trust trust) { return kTrustNames.at(static_cast<std::size_t>(trust)); }

std::optional<Trust> trust_from_name(std::string_view name) {
  for (std::size_t i = 0; i < kTrustNames.size(); ++i) {
    if (kTrustNames.at(i) == name) return static_cast<Trust>(i);
  }
  return std::nullopt;
}

Trust weaker(Trust one, Trust other) {
  if (one == Trust::given) return other;
  if (other == Trust::given) return one;
  return static_cast<int>(one) > static_cast<int>(other) ? one : other;
}

bool FactBase::add(Fact fact) {
  if (!by_id_.emplace(fact.id, facts_.size()).second) return false;
  facts_.push_back(std::move(fact));
  return true;
}

const Fact* FactBase::find(std::string_view id) const {
  auto found = by_id_.find(id);
  return found == by_id_.end() ? nullptr : &facts_.at(found->second);
}

std::vector<const Fact*> FactBase::beginning(std::string_view start) const {
  std::vector<std::size_t> places;
  for (auto at = by_id_.lower_bound(start); at != by_id_.end() && std::string_view(at->first).starts_with(start); ++at)
    places.push_back(at->second);
  std::sort(places.begin(), places.end());
  std::vector<const Fact*> found;
  for (const std::size_t place : places) found.push_back(&facts_[place]);
  return found;
}

}  // namespace benchleaf::model
