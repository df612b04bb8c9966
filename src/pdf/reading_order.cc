// In: the tags, and the pieces of content in the order they were placed. Out: the children of each element in reading order.
// A book has hundreds of thousands of elements: all lists lie in a few flat vectors.
#include "pdf/reading_order.h"

#include <algorithm>
#include <limits>

namespace benchleaf::pdf {

namespace {

std::size_t index_of(page::TagId tag) { return static_cast<std::size_t>(tag); }

/// Sorts 0..count-1 by group, keeping their order within it. `begin` gets the start of each group and the end of the last.
template <typename GroupOf>
std::vector<std::uint32_t> grouped(std::size_t count, std::size_t groups, std::vector<std::uint32_t>& begin, GroupOf group_of) {
  begin.assign(groups + 1, 0);
  for (std::size_t i = 0; i < count; ++i) ++begin.at(group_of(i) + 1);
  for (std::size_t group = 0; group < groups; ++group) begin.at(group + 1) += begin.at(group);
  std::vector<std::uint32_t> next(begin.begin(), begin.end() - 1);
  std::vector<std::uint32_t> sorted(count);
  for (std::size_t i = 0; i < count; ++i) sorted.at(next.at(group_of(i))++) = static_cast<std::uint32_t>(i);
  return sorted;
}

}  // namespace

ReadingOrder::ReadingOrder(const std::vector<page::Tag>& tags, const std::vector<Piece>& pieces) : pieces_(pieces) {
  constexpr Place kNone = std::numeric_limits<Place>::max();
  const std::size_t count = tags.size();
  // The root is nobody's child: it goes into a group behind all others.
  children_ =
      grouped(count, count + 1, child_begin_, [&](std::size_t i) { return i == 0 ? count : index_of(tags.at(i).parent); });
  own_pieces_ = grouped(pieces.size(), count, piece_begin_, [&](std::size_t i) { return index_of(pieces.at(i).tag); });

  place_.assign(count, kNone);
  for (std::size_t i = pieces.size(); i-- > 0;) place_.at(index_of(pieces.at(i).tag)) = static_cast<Place>(i);
  for (std::size_t i = count; i-- > 1;) {
    Place& above = place_.at(index_of(tags.at(i).parent));
    above = std::min(above, place_.at(i));
  }
  for (std::size_t tag = 0; tag < count; ++tag) {
    Place elder = -1;
    for (std::size_t i = child_begin_.at(tag); i < child_begin_.at(tag + 1); ++i) {
      Place& place = place_.at(children_.at(i));
      if (place == kNone) place = elder;
      elder = place;
    }
  }
}

std::vector<Kid> ReadingOrder::kids_of(page::TagId tag) const {
  const std::size_t at = index_of(tag);
  std::vector<Kid> kids;
  for (std::size_t i = child_begin_.at(at); i < child_begin_.at(at + 1); ++i)
    kids.push_back({Kid::Kind::element, children_.at(i)});
  for (std::size_t i = piece_begin_.at(at); i < piece_begin_.at(at + 1); ++i)
    kids.push_back({Kid::Kind::piece, own_pieces_.at(i)});
  const auto place = [this](const Kid& kid) {
    return kid.kind == Kid::Kind::piece ? static_cast<Place>(kid.index) : place_.at(kid.index);
  };
  // Stable: siblings without content share the place of their elder and stay behind it.
  std::stable_sort(kids.begin(), kids.end(), [&place](const Kid& a, const Kid& b) { return place(a) < place(b); });
  return kids;
}

const Piece* ReadingOrder::first_piece(page::TagId tag) const {
  const std::size_t at = index_of(tag);
  return piece_begin_.at(at) == piece_begin_.at(at + 1) ? nullptr : &pieces_.at(own_pieces_.at(piece_begin_.at(at)));
}

}  // namespace benchleaf::pdf
