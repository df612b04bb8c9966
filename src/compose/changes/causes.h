#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "compose/changes/changes.h"

namespace benchleaf::compose {

/// Finds the stated changes that something derived follows from.
class Causes {
 public:
  explicit Causes(const std::vector<Change>& stated);

  /// By the ids of the facts that it rests on, named as in the later state; where none of these changed, by the records that they
  /// belong to and by `own`, its own record.
  std::vector<std::string> of(const std::set<std::string>& rests_on, const std::string& own) const;

 private:
  void find(const std::string& id, std::set<std::string>& found) const;

  std::map<std::string, std::set<std::string>, std::less<>> by_place_;  ///< id of a fact or a record; ids of the changes
  std::map<std::string, std::set<std::string>, std::less<>> by_record_;
};

}  // namespace benchleaf::compose
