#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf::compose {

/// One entry of a list as it is told apart: all that it says, and its name where it has one.
struct ListEntry {
  std::string text;
  std::string name;
};

/// Places of one entry in two lists; one of them is missing where it was added or taken out.
struct EntryPair {
  std::optional<std::size_t> before, after;
};

/// Which entries of two lists are the same entry: a longest run of equal ones in order stands fast; between these, entries of
/// one name, and where as many are left on both sides, those in the same order. In the order of the second list.
std::vector<EntryPair> pair_entries(const std::vector<ListEntry>& before, const std::vector<ListEntry>& after);

}  // namespace benchleaf::compose
