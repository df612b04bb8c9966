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

std::string KnowledgeBase::resolved(std::string_view reference) const {
  auto alias = aliases.find(reference);
  return alias == aliases.end() ? std::string(reference) : alias->second;
}

const Record* KnowledgeBase::find(Kind kind, std::string_view id) const {
  if (const Record* record = by_id(*this, kind, id)) return record;
  auto alias = aliases.find(std::string(kind_name(kind)) + "/" + std::string(id));
  if (alias == aliases.end()) return nullptr;
  return by_id(*this, kind, std::string_view(alias->second).substr(alias->second.find('/') + 1));
}

const Record* KnowledgeBase::find(std::string_view reference) const {
  auto named = split_reference(reference);
  return named ? find(named->first, named->second) : nullptr;
}

bool KnowledgeBase::known(std::string_view reference) const {
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
