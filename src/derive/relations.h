#pragma once

#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "bench/codes.h"
#include "model/fact.h"
#include "model/record_ref.h"

namespace benchleaf::derive {

/// Another cell of the same size: same size, same system, or same size, OTHER system.
struct Peer {
  model::RecordRef cell;
  bool same_system = false;
  model::Trust trust = model::Trust::memory;  ///< the weakest of both sizes and the rows they were read with
  std::string fact;                           ///< id of the fact that says so: `cell/sr754w#same-size.sr754sw`
  /// What cell-swap says of it in the place of the cell: use, with_care, bench_test_only, never;
  /// none where it is as wide and yet too tall or too low for the place.
  bench::Code verdict = bench::Code::none;
  std::string why;
  model::Trust verdict_trust = model::Trust::memory;
};

/// All cells of one size.
struct SizeFamily {
  double diameter_mm = 0;
  double height_mm = 0;
  std::string printed;      ///< `7.9 × 5.4 mm`, thin spaces
  model::References cells;  ///< by number
};

/// What is derived between records. Every list is in a stable order.
class Relations {
 public:
  /// Peers of a cell: same system first, then other systems; within each the kindest verdict first, then by trust and number.
  const std::vector<Peer>& same_size(const model::RecordRef& cell) const;
  /// All sizes, by diameter, then height.
  const std::vector<SizeFamily>& sizes() const { return sizes_; }

  void set_peers(const model::RecordRef& cell, std::vector<Peer> peers);
  void set_sizes(std::vector<SizeFamily> sizes) { sizes_ = std::move(sizes); }

 private:
  std::map<model::RecordRef, std::vector<Peer>> peers_;
  std::vector<SizeFamily> sizes_;
};

}  // namespace benchleaf::derive
