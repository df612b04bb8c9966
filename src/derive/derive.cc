// In: the knowledge base and the published tables. Out: every fact, stated and derived, in one stable order, and the relations
// between records. The makers run in the order of the list: each may look up what those before it made.

#include "derive/derive.h"

#include <algorithm>
#include <cstddef>
#include <string_view>
#include <utility>
#include <vector>

#include "derive/makers.h"
#include "derive/natural_order.h"

namespace benchleaf::derive {
namespace {

constexpr FactMaker kMakers[] = {
    make_stated_facts,        make_table_facts,       make_cell_decode_facts, make_cell_life_facts,
    make_mixture_class_facts, make_page_answer_facts, make_same_size_facts,
};

/// Place of a fact: kinds in the order of kinds.def, tables last; then the id and the path, digits as numbers.
struct Place {
  std::size_t kind = 0;
  std::string_view record;
  std::string_view path;
};

Place place_of(const model::Fact& fact) {
  const model::FactId id(fact.id);
  const auto kind = id.kind();
  return {kind ? static_cast<std::size_t>(*kind) : model::all_kinds().size(), id.record, id.path};
}

bool comes_before(const Place& one, const Place& other) {
  if (one.kind != other.kind) return one.kind < other.kind;
  if (one.record != other.record) return natural_less(one.record, other.record);
  return natural_less(one.path, other.path);
}

/// Name of the overlay that the record of a fact comes from, or empty.
std::string overlay_of(const model::KnowledgeBase& base, const model::Fact& fact) {
  if (base.overlays.empty()) return {};
  const model::Record* record = base.find(model::FactId(fact.id).record);
  const model::Overlay* overlay = record == nullptr ? nullptr : base.overlay_of(*record);
  return overlay == nullptr ? std::string() : overlay->name;
}

model::FactBase in_order(const model::KnowledgeBase& base, const model::FactBase& facts) {
  std::vector<std::pair<Place, const model::Fact*>> order;
  for (const auto& fact : facts.all()) order.emplace_back(place_of(fact), &fact);
  std::sort(order.begin(), order.end(), [](const auto& a, const auto& b) { return comes_before(a.first, b.first); });
  model::FactBase sorted;
  for (const auto& [place, fact] : order) {
    model::Fact one = *fact;
    one.overlay = overlay_of(base, one);
    sorted.add(std::move(one));
  }
  return sorted;
}

}  // namespace

Derived derive(const model::KnowledgeBase& base, const model::Tables& tables, report::Findings&) {
  Making making{base, tables, {}, {}};
  for (const FactMaker make : kMakers) make(making);
  return {in_order(base, making.facts), std::move(making.relations)};
}

}  // namespace benchleaf::derive
