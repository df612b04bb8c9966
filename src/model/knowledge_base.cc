// In: the lists of records. Out: look-ups over all kinds.
#include "model/knowledge_base.h"

namespace benchleaf::model {

namespace {

template <typename List>
const Record* in_list(const List& list, std::string_view id) {
  auto found = list.find(id);
  return found == list.end() ? nullptr : &found->second;
}

const Record* by_id(const KnowledgeBase& base, Kind kind, std::string_view id) {
  switch (kind) {
#define BENCHLEAF_KIND(name, folder, Struct, list, plural) \
  case Kind::name:                                         \
    return in_list(base.list, id);
#include "model/kinds.def"
#undef BENCHLEAF_KIND
  }
  return nullptr;
}

}  // namespace

RecordRef KnowledgeBase::resolved(const RecordRef& reference) const {
  auto alias = aliases.find(reference);
  return alias == aliases.end() ? reference : alias->second;
}

const Record* KnowledgeBase::find(const RecordRef& reference) const {
  if (!reference.kind()) return nullptr;
  if (const Record* record = by_id(*this, *reference.kind(), reference.id())) return record;
  auto alias = aliases.find(reference);
  return alias == aliases.end() ? nullptr : by_id(*this, *alias->second.kind(), alias->second.id());
}

bool KnowledgeBase::known(const RecordRef& reference) const {
  return broken.find(reference) != broken.end() || find(reference) != nullptr;
}

const Overlay* KnowledgeBase::overlay_of(const Record& record) const {
  return record.overlay ? &overlays.at(*record.overlay) : nullptr;
}

std::vector<const Record*> KnowledgeBase::all() const {
  std::vector<const Record*> records;
#define BENCHLEAF_KIND(name, folder, Struct, list, plural) \
  for (const auto& [id, record] : list) records.push_back(&record);
#include "model/kinds.def"
#undef BENCHLEAF_KIND
  return records;
}

}  // namespace benchleaf::model
