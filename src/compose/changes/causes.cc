// In: stated changes, and what something derived rests on. Out: the changes it follows from.

#include "compose/changes/causes.h"

namespace benchleaf::compose {
namespace {

std::string record_of(const std::string& id) { return std::string(model::FactId(id).record); }

}  // namespace

Causes::Causes(const std::vector<Change>& stated) {
  for (const Change& change : stated) {
    by_record_[record_of(change.id)].insert(change.id);
    for (const auto& field : change.fields) by_place_[record_of(change.id) + "#" + field].insert(change.id);
    if (change.fields.empty()) by_place_[change.id].insert(change.id);
  }
}

/// A change of a value is one of all that lies below it, and so is a record that came or went.
void Causes::find(const std::string& id, std::set<std::string>& found) const {
  for (std::string place = id; !place.empty();) {
    const auto changes = by_place_.find(place);
    if (changes != by_place_.end()) found.insert(changes->second.begin(), changes->second.end());
    const std::size_t end = place.find_last_of(".#");
    place.resize(end == std::string::npos ? 0 : end);
  }
}

std::vector<std::string> Causes::of(const std::set<std::string>& rests_on, const std::string& own) const {
  std::set<std::string> found;
  for (const auto& id : rests_on) find(id, found);
  if (found.empty()) {
    std::set<std::string> records = {record_of(own)};
    for (const auto& id : rests_on) records.insert(record_of(id));
    for (const auto& record : records) {
      const auto changes = by_record_.find(record);
      if (changes != by_record_.end()) found.insert(changes->second.begin(), changes->second.end());
    }
  }
  return {found.begin(), found.end()};
}

}  // namespace benchleaf::compose
