#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "page/display.h"
#include "pdf/content.h"

namespace benchleaf::pdf {

/// What stands directly below a structure element: another element, or a piece of content.
struct Kid {
  enum class Kind { element, piece };
  Kind kind = Kind::element;
  std::size_t index = 0;  ///< into the tags, or into the pieces
};

/// The order in which a structure tree is read: by first placed content; an element without content after its elder
/// sibling, or first where it has none. Every tag but the root stands behind its parent.
class ReadingOrder {
 public:
  ReadingOrder(const std::vector<page::Tag>& tags, const std::vector<Piece>& pieces);

  std::vector<Kid> kids_of(page::TagId tag) const;
  /// The first piece that belongs to the element itself, or nothing.
  const Piece* first_piece(page::TagId tag) const;

 private:
  using Place = std::int32_t;  ///< index of a piece in placing order; -1 is before all of them

  const std::vector<Piece>& pieces_;
  std::vector<Place> place_;                ///< by tag: where it stands among its siblings
  std::vector<std::uint32_t> child_begin_;  ///< by tag: where its children begin in children_
  std::vector<std::uint32_t> children_;     ///< tags, in the order they were made
  std::vector<std::uint32_t> piece_begin_;  ///< by tag: where its pieces begin in own_pieces_
  std::vector<std::uint32_t> own_pieces_;   ///< pieces, in the order they were placed
};

}  // namespace benchleaf::pdf
