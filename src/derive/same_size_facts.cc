// In: the stated size of each cell. Out: for each cell the others of its size, apart by system, and the families of one size.

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "base/number.h"
#include "base/quantity.h"
#include "bench/cell_candidates.h"
#include "derive/makers.h"
#include "derive/natural_order.h"
#include "standards/cell_code.h"

namespace benchleaf::derive {
namespace {

using model::Cell;
using standards::CellSize;
using standards::SizeCode;

constexpr std::string_view kSource =
    "same diameter code, and the same height digits or heights no further apart than published lists of one size";

/// A cell whose size is stated.
struct Sized {
  const Cell* cell = nullptr;
  CellSize size;
  SizeCode code;
};

std::optional<CellSize> size_of(const Cell& cell) {
  if (!cell.usable("size.diameter") || !cell.usable("size.height") || !cell.size.diameter || !cell.size.height)
    return std::nullopt;
  const auto diameter = cell.size.diameter->in(base::Unit::millimetre);
  const auto height = cell.size.height->in(base::Unit::millimetre);
  if (!diameter || !height || !cell.size.diameter->has_value() || !cell.size.height->has_value()) return std::nullopt;
  return CellSize{base::tidy(diameter->high), base::tidy(height->high)};
}

/// The number a restorer knows the cell by.
std::string number_of(const Cell& cell) {
  if (!cell.trade_number.empty()) return cell.trade_number;
  return cell.consumer_number.empty() ? cell.designation : cell.consumer_number;
}

/// The sized cells by their code, so that only cells of neighbouring digits are held against each other.
class Sizes {
 public:
  explicit Sizes(const model::KnowledgeBase& base) {
    for (const auto& [id, cell] : base.cells) {
      const auto size = size_of(cell);
      if (!size) continue;
      const SizeCode code = standards::size_code(size->diameter, size->height);
      by_code_[{code.code, code.tenths}].push_back({&cell, *size, code});
    }
  }

  std::vector<Sized> all() const {
    std::vector<Sized> list;
    for (const auto& [code, cells] : by_code_) list.insert(list.end(), cells.begin(), cells.end());
    return list;
  }

  std::vector<const Cell*> like(const Sized& one) const {
    std::vector<const Cell*> list;
    for (int tenths = one.code.tenths - 1; tenths <= one.code.tenths + 1; ++tenths) {
      const auto found = by_code_.find({one.code.code, tenths});
      if (found == by_code_.end()) continue;
      for (const Sized& other : found->second) {
        const bool same = other.cell != one.cell && other.cell->cells_in_series == one.cell->cells_in_series &&
                          standards::same_size(one.size, other.size);
        if (same) list.push_back(other.cell);
      }
    }
    return list;
  }

 private:
  std::map<std::pair<int, int>, std::vector<Sized>> by_code_;
};

/// The fact that two cells share a size, resting on both sizes and on the row of the diameter code.
model::Fact peer_fact(const Sized& one, const Cell& other, const Making& making) {
  model::Fact fact;
  fact.id = one.cell->reference() + "#same-size." + other.id;
  fact.printed = one.cell->system == other.system ? "same size, same system" : "same size, OTHER system";
  fact.trust = model::Trust::given;
  fact.derived = true;
  fact.source = std::string(kSource);
  for (const Cell* cell : {one.cell, &other}) {
    for (const char* path : {"#size.diameter", "#size.height", "#system"}) fact.inputs.push_back(cell->reference() + path);
  }
  fact.inputs.push_back("table/cell-diameter-codes#" + std::to_string(one.code.code) + ".diameter");
  for (const auto& id : fact.inputs) {
    const model::Fact* input = making.facts.find(id);
    const bool about_system = id.size() > 7 && id.compare(id.size() - 7, 7, "#system") == 0;
    if (input != nullptr && !about_system) fact.trust = model::weaker(fact.trust, input->trust);
  }
  return fact;
}

bool before(const Peer& one, const Peer& other, const model::KnowledgeBase& base) {
  if (one.same_system != other.same_system) return one.same_system;
  if (one.verdict != other.verdict) return one.verdict < other.verdict;
  if (one.trust != other.trust) return model::weaker(one.trust, other.trust) == other.trust;
  return natural_less(number_of(*base.find<Cell>(one.cell)), number_of(*base.find<Cell>(other.cell)));
}

/// What cell-swap says of each peer in the place of the cell.
void judge_peers(const Cell& cell, std::vector<Peer>& peers, const Making& making) {
  std::vector<std::string> others;
  for (const Peer& peer : peers) others.push_back(peer.cell);
  for (auto& judged : bench::judge_in_place(cell.reference(), others, {making.tables, making.facts})) {
    const auto peer =
        std::find_if(peers.begin(), peers.end(), [&judged](const Peer& one) { return one.cell == judged.item.record; });
    peer->verdict = judged.item.verdict;
    peer->why = std::move(judged.why);
    peer->verdict_trust = judged.item.trust;
  }
}

void make_peers(const Sizes& sizes, Making& making) {
  for (const Sized& one : sizes.all()) {
    std::vector<Peer> peers;
    for (const Cell* other : sizes.like(one)) {
      model::Fact fact = peer_fact(one, *other, making);
      Peer peer;
      peer.cell = other->reference();
      peer.same_system = one.cell->system == other->system;
      peer.trust = fact.trust;
      peer.fact = fact.id;
      peers.push_back(std::move(peer));
      making.facts.add(std::move(fact));
    }
    judge_peers(*one.cell, peers, making);
    std::sort(peers.begin(), peers.end(), [&](const Peer& a, const Peer& b) { return before(a, b, making.base); });
    making.relations.set_peers(one.cell->reference(), std::move(peers));
  }
}

std::string printed_size(const CellSize& size) {
  const std::string space(base::kThinSpace);
  return base::paper_number(base::shortest_text(size.diameter)) + space + "\xC3\x97" + space +
         base::printed(base::shortest_text(size.height), base::Unit::millimetre);
}

void make_families(const Sizes& sizes, Making& making) {
  std::map<std::pair<double, double>, std::vector<const Cell*>> by_size;
  for (const Sized& one : sizes.all()) by_size[{one.size.diameter, one.size.height}].push_back(one.cell);
  std::vector<SizeFamily> families;
  for (auto& [size, cells] : by_size) {
    std::sort(cells.begin(), cells.end(),
              [](const Cell* a, const Cell* b) { return natural_less(number_of(*a), number_of(*b)); });
    SizeFamily family{size.first, size.second, printed_size({size.first, size.second}), {}};
    for (const Cell* cell : cells) family.cells.push_back(cell->reference());
    families.push_back(std::move(family));
  }
  making.relations.set_sizes(std::move(families));
}

}  // namespace

void make_same_size_facts(Making& making) {
  const Sizes sizes(making.base);
  make_peers(sizes, making);
  make_families(sizes, making);
}

}  // namespace benchleaf::derive
