#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "model/record.h"
#include "read/shape.h"

namespace benchleaf::read {

/// The names that records answer to, before any is decoded: so that a reference gets its kind wherever it stands.
class RecordNames {
 public:
  void add(model::RecordRef reference) { known_.insert(std::move(reference)); }
  /// An alias never hides a record, and the first of two equal ones holds.
  void add_alias(const model::RecordRef& alias, const model::RecordRef& reference);
  const std::map<model::RecordRef, model::RecordRef, std::less<>>& aliases() const { return aliases_; }

  /// What was found with its target filled in, where exactly one record fits.
  model::ReferencePlace resolve(FoundReference found) const;

 private:
  /// The record, aliases followed; empty where there is none.
  model::RecordRef named(const model::RecordRef& reference) const;

  std::set<model::RecordRef, std::less<>> known_;
  std::map<model::RecordRef, model::RecordRef, std::less<>> aliases_;
};

}  // namespace benchleaf::read
