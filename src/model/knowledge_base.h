#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "model/record.h"
#include "model/records/abrasive.h"
#include "model/records/caution.h"
#include "model/records/cell.h"
#include "model/records/chart.h"
#include "model/records/chemistry.h"
#include "model/records/crystal.h"
#include "model/records/gasket.h"
#include "model/records/handbook.h"
#include "model/records/hold.h"
#include "model/records/job.h"
#include "model/records/look.h"
#include "model/records/material.h"
#include "model/records/module.h"
#include "model/records/overlay.h"
#include "model/records/page.h"
#include "model/records/part.h"
#include "model/records/procedure.h"
#include "model/records/question.h"
#include "model/records/residue.h"
#include "model/records/source.h"
#include "model/records/stock.h"
#include "model/records/substance.h"
#include "model/records/symptom.h"
#include "model/records/term.h"
#include "model/records/tool.h"
#include "model/records/watch.h"

namespace benchleaf::model {

/// All records that were read, each list ordered by id: `cells`, `modules`, ... as kinds.def names them.
struct KnowledgeBase {
  Handbook handbook;
  std::vector<Overlay> overlays;  ///< in the order in which they were given
#define BENCHLEAF_KIND(name, folder, Struct, list, plural) std::map<std::string, Struct, std::less<>> list;
#include "model/kinds.def"
#undef BENCHLEAF_KIND
  std::map<RecordRef, RecordRef, std::less<>> aliases;  ///< `cell/old` to `cell/new`
  std::set<RecordRef, std::less<>> broken;              ///< files that gave no record; naming one is no mistake

  /// The record, aliases resolved, or nullptr.
  const Record* find(const RecordRef& reference) const;
  /// The same by a word that somebody typed.
  const Record* find(std::string_view text) const { return find(RecordRef(text)); }
  /// The same of one kind, `find<Cell>(ref)`; nullptr for a record of another kind.
  template <typename RecordType>
  const RecordType* find(const RecordRef& reference) const;
  /// Whether a file, an alias or a broken record answers to it.
  bool known(const RecordRef& reference) const;
  bool known(std::string_view text) const { return known(RecordRef(text)); }
  /// With an alias resolved, else the same.
  RecordRef resolved(const RecordRef& reference) const;
  /// The overlay that a record comes from, or nullptr.
  const Overlay* overlay_of(const Record& record) const;
  /// All records by kind, then id.
  std::vector<const Record*> all() const;
};

/// The kind whose records are of a type.
template <typename RecordType>
inline constexpr Kind kKindOf = Kind::cell;
#define BENCHLEAF_KIND(name, folder, Struct, list, plural) \
  template <>                                              \
  inline constexpr Kind kKindOf<Struct> = Kind::name;
#include "model/kinds.def"
#undef BENCHLEAF_KIND

template <typename RecordType>
const RecordType* KnowledgeBase::find(const RecordRef& reference) const {
  return reference.is(kKindOf<RecordType>) ? static_cast<const RecordType*>(find(reference)) : nullptr;
}

}  // namespace benchleaf::model
