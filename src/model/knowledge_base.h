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
#include "model/records/material.h"
#include "model/records/module.h"
#include "model/records/overlay.h"
#include "model/records/page.h"
#include "model/records/part.h"
#include "model/records/procedure.h"
#include "model/records/residue.h"
#include "model/records/source.h"
#include "model/records/stock.h"
#include "model/records/substance.h"
#include "model/records/symptom.h"
#include "model/records/term.h"
#include "model/records/tool.h"
#include "model/records/watch.h"

namespace benchleaf::model {

/// All records that were read, each list ordered by id: `cells`, `modules`, ... as kinds.def names them. A reference in
/// a typed field is `kind/id` with aliases resolved; one that leads nowhere is kept as it was written.
struct KnowledgeBase {
  Handbook handbook;
  std::vector<Overlay> overlays;  ///< in the order in which they were given
#define BENCHLEAF_KIND(name, folder, Struct, list, plural) std::map<std::string, Struct, std::less<>> list;
#include "model/kinds.def"
#undef BENCHLEAF_KIND
  std::map<std::string, std::string, std::less<>> aliases;  ///< `cell/old` to `cell/new`
  std::set<std::string, std::less<>> broken;                ///< `kind/id` of files that gave no record; naming one is no mistake

  /// The record, aliases resolved, or nullptr.
  const Record* find(Kind kind, std::string_view id) const;
  /// The same by `kind/id`.
  const Record* find(std::string_view reference) const;
  /// Whether a file, an alias or a broken record answers to `kind/id`.
  bool known(std::string_view reference) const;
  /// `kind/id` with an alias resolved, else the same text.
  std::string resolved(std::string_view reference) const;
  /// The overlay that a record comes from, or nullptr.
  const Overlay* overlay_of(const Record& record) const;
  /// All records by kind, then id.
  std::vector<const Record*> all() const;
};

}  // namespace benchleaf::model
