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
  void add(std::string reference) { known_.insert(std::move(reference)); }
  /// An alias never hides a record, and the first of two equal ones holds.
  void add_alias(const std::string& alias, const std::string& reference);
  const std::map<std::string, std::string, std::less<>>& aliases() const { return aliases_; }

  /// What was found with its target filled in, where exactly one record fits.
  model::Reference resolve(FoundReference found) const;

 private:
  /// `kind/id` of a record, aliases followed; empty where there is none.
  std::string named(const std::string& reference) const;

  std::set<std::string, std::less<>> known_;
  std::map<std::string, std::string, std::less<>> aliases_;
};

}  // namespace benchleaf::read
