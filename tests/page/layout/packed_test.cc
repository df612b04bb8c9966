// Expected: the items that went in, field by field.
#include "page/packed.h"

#include <limits>
#include <tuple>
#include <vector>

#include "support/catch.h"

namespace benchleaf::page {

namespace {

auto fields(const Glyph& glyph) { return std::tuple(glyph.id, glyph.advance, glyph.dx, glyph.dy, glyph.extra, glyph.cluster); }
auto fields(Point point) { return std::tuple(point.x, point.y); }

void check_same(const TextItem& one, const TextItem& other) {
  CHECK(one.font == other.font);
  CHECK(one.size == other.size);
  CHECK(fields(one.at) == fields(other.at));
  CHECK(one.color == other.color);
  CHECK(one.quarter_turns == other.quarter_turns);
  CHECK(one.text == other.text);
  REQUIRE(one.glyphs.size() == other.glyphs.size());
  for (std::size_t i = 0; i < one.glyphs.size(); ++i) CHECK(fields(one.glyphs[i]) == fields(other.glyphs[i]));
}

void check_same(const PathItem& one, const PathItem& other) {
  CHECK(one.fill == other.fill);
  CHECK(one.stroke == other.stroke);
  CHECK(one.stroke_width == other.stroke_width);
  CHECK(one.dash == other.dash);
  CHECK(one.even_odd == other.even_odd);
  REQUIRE(one.segments.size() == other.segments.size());
  for (std::size_t i = 0; i < one.segments.size(); ++i) {
    CHECK(one.segments[i].op == other.segments[i].op);
    CHECK(fields(one.segments[i].to) == fields(other.segments[i].to));
    CHECK(fields(one.segments[i].control1) == fields(other.segments[i].control1));
    CHECK(fields(one.segments[i].control2) == fields(other.segments[i].control2));
  }
}

void check_same(const SignItem& one, const SignItem& other) {
  CHECK(one.trust == other.trust);
  CHECK(one.derived == other.derived);
  CHECK(fields(one.at) == fields(other.at));
  CHECK(one.size == other.size);
}

void check_same(const std::vector<Item>& items, const std::vector<Item>& others) {
  REQUIRE(items.size() == others.size());
  for (std::size_t i = 0; i < items.size(); ++i) {
    CHECK(items[i].tag == others[i].tag);
    REQUIRE(items[i].what.index() == others[i].what.index());
    std::visit([&](const auto& what) { check_same(what, std::get<std::decay_t<decltype(what)>>(others[i].what)); },
               items[i].what);
  }
}

/// Words, words of the same type, long clusters, ends of the ranges, paths of every kind of segment, signs, artifacts.
std::vector<Item> various() {
  TextItem words;
  words.font = 3;
  words.size = 9'500;
  words.at = {61'234, 700'001};
  words.color = {23, 0, 255};
  words.text = "Ab\u00AD";
  words.glyphs = {{65'534, 1'200, 0, 0, 0, 0}, {0, -3, 5, -7, -1, 1}, {17, 0, 0, 0, 1'234, 2}};
  TextItem next = words;
  next.at = {-5, -700'000};
  next.quarter_turns = 3;
  next.text.assign(100'000, 'x');
  next.glyphs = {{1, 1, 0, 0, 0, 0}, {1, 1, 0, 0, 0, 62}, {1, 1, 0, 0, 0, 125}, {1, 1, 0, 0, 0, 99'999}};
  TextItem last = words;
  last.glyphs = {{std::numeric_limits<std::uint32_t>::max(), std::numeric_limits<std::int32_t>::min(), 0, 0,
                  std::numeric_limits<Length>::min(), std::numeric_limits<std::uint32_t>::max()}};
  PathItem path;
  path.segments = {{PathSegment::Op::move, {1, 2}, {}, {}},
                   {PathSegment::Op::line, {-3, 4}, {}, {}},
                   {PathSegment::Op::curve, {5, 6}, {7, 8}, {9, 10}},
                   {PathSegment::Op::close, {}, {}, {}}};
  path.fill = Color{1, 2, 3};
  path.even_odd = true;
  PathItem dashed = path;
  dashed.fill.reset();
  dashed.even_odd = false;
  dashed.stroke = Color{};
  dashed.stroke_width = 750;
  dashed.dash = {1'000, 250};
  return {{7, words},
          {7, next},
          {kLayoutArtifact, path},
          {kPaginationArtifact, dashed},
          {1'000'000, last},
          {7, words},
          {7, SignItem{model::Trust::given, true, {11, 12}, 6'900}},
          {7, TextItem{}}};
}

}  // namespace

TEST_CASE("packed items come back as they were, in their order", "[page]") {
  Page page;
  page.items = various();
  pack(page);
  CHECK(page.items.empty());
  CHECK_FALSE(is_empty(page));
  check_same(items_of(page), various());
  unpack(page);
  CHECK(page.packed.empty());
  check_same(page.items, various());
}

TEST_CASE("what is packed later, or lies loose, stands behind", "[page]") {
  const std::vector<Item> all = various();
  Page page;
  page.items = {all[0], all[1]};
  pack(page);
  page.items = {all[2], all[3], all[4]};
  pack(page);
  pack(page);  // nothing more to pack
  page.items = {all[5], all[6], all[7]};
  check_same(items_of(page), all);
}

TEST_CASE("elements are told and renamed, packed or not", "[page]") {
  Page page;
  page.items = {{4, TextItem{}}, {4, TextItem{}}, {kLayoutArtifact, PathItem{}}, {2, TextItem{}}};
  pack(page);
  page.items = {{3, TextItem{}}};
  move_tags(page, {0, 1, 20, 30, 40});
  std::vector<TagId> told;
  for_each_tag(page, [&told](TagId tag) { told.push_back(tag); });
  CHECK(told == std::vector<TagId>{40, kLayoutArtifact, 20, 30});
  std::vector<TagId> tags;
  for (const Item& item : items_of(page)) tags.push_back(item.tag);
  CHECK(tags == std::vector<TagId>{40, 40, kLayoutArtifact, 20, 30});
}

TEST_CASE("a page without items is empty", "[page]") {
  Page page;
  pack(page);
  CHECK(is_empty(page));
  CHECK(items_of(page).empty());
}

}  // namespace benchleaf::page
