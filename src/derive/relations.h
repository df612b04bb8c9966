#pragma once

#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "model/fact.h"

namespace benchleaf::derive {

/// Another cell of the same size: same size, same system, or same size, OTHER system.
struct Peer {
  std::string cell;  ///< `cell/sr754sw`
  bool same_system = false;
  model::Trust trust = model::Trust::memory;  ///< the weakest of both sizes and the rows they were read with
  std::string fact;                           ///< id of the fact that says so: `cell/sr754w#same-size.sr754sw`
};

/// All cells of one size.
struct SizeFamily {
  double diameter_mm = 0;
  double height_mm = 0;
  std::string printed;             ///< `7.9 × 5.4 mm`, thin spaces
  std::vector<std::string> cells;  ///< `cell/ID`, by number
};

/// What is derived between records. Every list is in a stable order.
class Relations {
 public:
  /// Peers of `cell/ID`: same system first, then other systems; within each by trust, then by number.
  const std::vector<Peer>& same_size(std::string_view cell) const;
  /// All sizes, by diameter, then height.
  const std::vector<SizeFamily>& sizes() const { return sizes_; }

  void set_peers(std::string_view cell, std::vector<Peer> peers);
  void set_sizes(std::vector<SizeFamily> sizes) { sizes_ = std::move(sizes); }

 private:
  std::map<std::string, std::vector<Peer>, std::less<>> peers_;
  std::vector<SizeFamily> sizes_;
};

}  // namespace benchleaf::derive
