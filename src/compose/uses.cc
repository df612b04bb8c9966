// In: records. Out: the same references read backwards: who names a record, what touches a material, what meets what.
#include "compose/uses.h"

#include <algorithm>

namespace benchleaf::compose {

namespace {

/// A list that is empty when nothing was found, so that callers need not ask.
template <typename Map>
const typename Map::mapped_type& found_or_empty(const Map& map, const model::RecordRef& key) {
  static const typename Map::mapped_type kEmpty;
  const auto found = map.find(key);
  return found == map.end() ? kEmpty : found->second;
}

}  // namespace

Uses::Uses(const model::KnowledgeBase& records) {
  for (const model::Record* record : records.all()) {
    for (const model::ReferencePlace& reference : record->references) {
      if (reference.target.empty()) continue;
      named_by_[reference.target].push_back({record->reference(), reference.path});
    }
  }
  for (const auto& [id, chemistry] : records.chemistries) {
    for (std::size_t i = 0; i < chemistry.on_materials.size(); ++i) {
      const auto& item = chemistry.on_materials[i];
      liquids_[item.material].push_back({chemistry.reference(), "on-materials." + std::to_string(i), &item});
    }
  }
  for (const auto& [id, abrasive] : records.abrasives) {
    for (std::size_t i = 0; i < abrasive.on_materials.size(); ++i) {
      const auto& item = abrasive.on_materials[i];
      liquids_[item.material].push_back({abrasive.reference(), "on-materials." + std::to_string(i), &item});
    }
  }
}

model::References Uses::named_by(const model::RecordRef& reference, model::Kind kind, std::string_view field) const {
  model::References found;
  for (const Use& use : found_or_empty(named_by_, reference)) {
    const bool there = use.record.is(kind) && use.path.substr(0, use.path.find('.')).find(field) == 0;
    if (there && (found.empty() || found.back() != use.record)) found.push_back(use.record);
  }
  return found;
}

const std::vector<LiquidVerdict>& Uses::liquids_on(const model::RecordRef& material) const {
  return found_or_empty(liquids_, material);
}

}  // namespace benchleaf::compose
