// In: two lists. Out: which entry of one is which of the other.

#include "compose/changes/list_pairs.h"

#include <algorithm>
#include <map>
#include <set>

namespace benchleaf::compose {
namespace {

using Entries = std::vector<ListEntry>;

/// Beyond this the table of the longest run would cost more than it tells.
constexpr std::size_t kLargestTable = std::size_t{1} << 22;

/// A stretch of both lists.
struct Stretch {
  std::size_t before = 0, before_end = 0, after = 0, after_end = 0;
  std::size_t rows() const { return before_end - before; }
  std::size_t columns() const { return after_end - after; }
};

class Pairing {
 public:
  Pairing(const Entries& before, const Entries& after) : before_(before), after_(after) {}

  std::vector<EntryPair> run() {
    Stretch middle{0, before_.size(), 0, after_.size()};
    while (middle.rows() > 0 && middle.columns() > 0 && equal(middle.before, middle.after)) keep(middle.before++, middle.after++);
    std::size_t tail = 0;
    while (middle.rows() > 0 && middle.columns() > 0 && equal(middle.before_end - 1, middle.after_end - 1)) {
      --middle.before_end, --middle.after_end, ++tail;
    }
    between_equals(middle);
    for (std::size_t i = 0; i < tail; ++i) keep(middle.before_end + i, middle.after_end + i);
    return std::move(pairs_);
  }

 private:
  bool equal(std::size_t before, std::size_t after) const { return before_[before].text == after_[after].text; }
  void keep(std::size_t before, std::size_t after) { pairs_.push_back({before, after}); }

  /// Keeps the longest run of equal entries, and pairs what lies between them.
  void between_equals(const Stretch& all) {
    if (all.rows() * all.columns() > kLargestTable) return pair_gap(all);
    const std::vector<std::vector<std::size_t>> run = run_lengths(all);
    Stretch gap{all.before, all.before, all.after, all.after};
    while (gap.before_end < all.before_end && gap.after_end < all.after_end) {
      const std::size_t row = gap.before_end - all.before, column = gap.after_end - all.after;
      if (equal(gap.before_end, gap.after_end)) {
        pair_gap(gap);
        keep(gap.before_end, gap.after_end);
        gap = {gap.before_end + 1, gap.before_end + 1, gap.after_end + 1, gap.after_end + 1};
      } else if (run[row + 1][column] >= run[row][column + 1]) {
        ++gap.before_end;
      } else {
        ++gap.after_end;
      }
    }
    gap.before_end = all.before_end;
    gap.after_end = all.after_end;
    pair_gap(gap);
  }

  /// Length of the longest run of equal entries from each place on.
  std::vector<std::vector<std::size_t>> run_lengths(const Stretch& all) const {
    std::vector<std::vector<std::size_t>> run(all.rows() + 1, std::vector<std::size_t>(all.columns() + 1, 0));
    for (std::size_t row = all.rows(); row-- > 0;) {
      for (std::size_t column = all.columns(); column-- > 0;) {
        run[row][column] = equal(all.before + row, all.after + column) ? run[row + 1][column + 1] + 1
                                                                       : std::max(run[row + 1][column], run[row][column + 1]);
      }
    }
    return run;
  }

  void pair_gap(const Stretch& gap) {
    std::map<std::size_t, std::size_t> partner = by_name(gap);
    std::vector<std::size_t> old_left, new_left;
    std::set<std::size_t> taken;
    for (const auto& [after, before] : partner) taken.insert(before);
    for (std::size_t i = gap.before; i < gap.before_end; ++i) {
      if (taken.count(i) == 0) old_left.push_back(i);
    }
    for (std::size_t i = gap.after; i < gap.after_end; ++i) {
      if (partner.count(i) == 0) new_left.push_back(i);
    }
    if (old_left.size() == new_left.size()) {
      for (std::size_t i = 0; i < old_left.size(); ++i) partner.emplace(new_left[i], old_left[i]);
      old_left.clear();
    }
    for (const std::size_t i : old_left) pairs_.push_back({i, std::nullopt});
    for (std::size_t i = gap.after; i < gap.after_end; ++i) {
      const auto found = partner.find(i);
      pairs_.push_back({found == partner.end() ? std::nullopt : std::optional(found->second), i});
    }
  }

  /// The entry of the first list by the place in the second.
  std::map<std::size_t, std::size_t> by_name(const Stretch& gap) const {
    std::map<std::string, std::size_t> named;
    for (std::size_t i = gap.before; i < gap.before_end; ++i) named.emplace(before_[i].name, i);
    named.erase("");
    std::map<std::size_t, std::size_t> partner;
    for (std::size_t i = gap.after; i < gap.after_end; ++i) {
      const auto found = named.find(after_[i].name);
      if (found == named.end()) continue;
      partner.emplace(i, found->second);
      named.erase(found);
    }
    return partner;
  }

  const Entries& before_;
  const Entries& after_;
  std::vector<EntryPair> pairs_;
};

}  // namespace

std::vector<EntryPair> pair_entries(const Entries& before, const Entries& after) { return Pairing(before, after).run(); }

}  // namespace benchleaf::compose
