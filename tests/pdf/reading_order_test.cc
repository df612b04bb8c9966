// Expected: the rule on the order of children that src/page/display.h states for tags.
#include "pdf/reading_order.h"

#include <string>
#include <vector>

#include "support/catch.h"

namespace benchleaf::pdf {

namespace {

std::vector<page::Tag> tags_below(const std::vector<page::TagId>& parents) {
  std::vector<page::Tag> tags(parents.size());
  for (std::size_t i = 0; i < parents.size(); ++i) tags[i].parent = parents[i];
  return tags;
}

/// Pieces in placing order, all on one page.
std::vector<Piece> pieces_of(const std::vector<page::TagId>& placed) {
  std::vector<Piece> pieces;
  for (page::TagId tag : placed) pieces.push_back({tag, 0, static_cast<int>(pieces.size())});
  return pieces;
}

/// `e1 p0`: element 1, then piece 0.
std::string order(const ReadingOrder& reading, page::TagId tag) {
  std::string words;
  for (const Kid& kid : reading.kids_of(tag)) {
    words += (words.empty() ? "" : " ") + std::string(kid.kind == Kid::Kind::element ? "e" : "p") + std::to_string(kid.index);
  }
  return words;
}

}  // namespace

TEST_CASE("children stand in order of first content, not of making", "[pdf]") {
  const auto tags = tags_below({-1, 0, 0, 0});
  const auto pieces = pieces_of({3, 1, 2, 3});
  CHECK(order(ReadingOrder(tags, pieces), 0) == "e3 e1 e2");
  CHECK(order(ReadingOrder(tags, pieces), 3) == "p0 p3");
}

TEST_CASE("content of a descendant counts as content of the element", "[pdf]") {
  // 1 holds 3, 2 holds 4; the content of 4 comes first
  const auto tags = tags_below({-1, 0, 0, 1, 2});
  const auto pieces = pieces_of({4, 3});
  CHECK(order(ReadingOrder(tags, pieces), 0) == "e2 e1");
}

TEST_CASE("own content and elements mix as they are placed", "[pdf]") {
  const auto tags = tags_below({-1, 0, 1});
  const auto pieces = pieces_of({1, 2, 1});
  CHECK(order(ReadingOrder(tags, pieces), 1) == "p0 e2 p2");
}

TEST_CASE("an element without content stands after its elder sibling", "[pdf]") {
  // a row of four cells: the second and third are empty, and so is the first of the next row
  const auto tags = tags_below({-1, 0, 1, 1, 1, 1, 0, 6, 6});
  const auto pieces = pieces_of({5, 2, 8});
  const ReadingOrder reading(tags, pieces);
  CHECK(order(reading, 1) == "e5 e2 e3 e4");
  CHECK(order(reading, 6) == "e7 e8");
  CHECK(order(reading, 0) == "e1 e6");
}

TEST_CASE("a tree without any content keeps the order of making", "[pdf]") {
  const auto tags = tags_below({-1, 0, 0, 2, 2});
  const std::vector<Piece> pieces;
  const ReadingOrder reading(tags, pieces);
  CHECK(order(reading, 0) == "e1 e2");
  CHECK(order(reading, 2) == "e3 e4");
  CHECK(reading.first_piece(0) == nullptr);
}

}  // namespace benchleaf::pdf
