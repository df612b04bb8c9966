#pragma once

#include <map>
#include <string>
#include <vector>

#include "compose/changes/changes.h"
#include "model/record_ref.h"

namespace benchleaf::compose {

/// Ids of facts and records that are the same under another name: `chemistry/x#made-of.0.strength` after an entry was put before
/// it, `cell/old` under a new id. The names of the earlier state lead to those of the later one.
class Renamed {
 public:
  void add_record(const model::RecordRef& before, const model::RecordRef& after);
  void add_fact(const std::string& before, const std::string& after) {
    if (before != after) facts_.emplace(before, after);
  }
  /// The later name of a record, a fact, or a fact whose path names a record (`cell/a#same-size.b`).
  std::string operator()(const std::string& before) const;

 private:
  std::map<std::string, std::string, std::less<>> records_;
  std::map<std::string, std::string, std::less<>> ids_;  ///< of records, without their kind
  std::map<std::string, std::string, std::less<>> facts_;
};

/// What the records and the handbook's own file say otherwise, by kind, id and path.
std::vector<Change> record_changes(const State& before, const State& after, Renamed& renamed);

}  // namespace benchleaf::compose
