// In: relations one by one. Out: look-ups in them.

#include "derive/relations.h"

#include <utility>

namespace benchleaf::derive {

const std::vector<Peer>& Relations::same_size(const model::RecordRef& cell) const {
  static const std::vector<Peer> kNone;
  const auto found = peers_.find(cell);
  return found == peers_.end() ? kNone : found->second;
}

void Relations::set_peers(const model::RecordRef& cell, std::vector<Peer> peers) {
  peers_.insert_or_assign(cell, std::move(peers));
}

}  // namespace benchleaf::derive
