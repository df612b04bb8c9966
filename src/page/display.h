#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "model/fact.h"

namespace benchleaf::page {

/// Lengths are 1/1000 pt. The origin of a page is its top left corner, y grows downwards.
using Length = std::int64_t;
inline constexpr Length kPt = 1000;
/// Millimetres to lengths, to the nearest 1/1000 pt.
Length from_mm(double mm);

struct Point {
  Length x = 0;
  Length y = 0;
};

struct Box {
  Length left = 0;
  Length top = 0;
  Length right = 0;
  Length bottom = 0;
};

struct Color {
  std::uint8_t red = 0;
  std::uint8_t green = 0;
  std::uint8_t blue = 0;
  friend bool operator==(const Color&, const Color&) = default;
};

/// One shaped glyph. Advance and offsets are in font units with kerning in them; `extra` is the stretch of a justified space.
struct Glyph {
  std::uint32_t id = 0;
  std::int32_t advance = 0;
  std::int32_t dx = 0;
  std::int32_t dy = 0;
  Length extra = 0;           ///< added after the glyph
  std::uint32_t cluster = 0;  ///< byte offset into TextItem::text of the first code point it stands for
};

using FontIndex = int;  ///< into the FontSet the pages were set with

/// Glyphs of one font and size on one baseline. A hyphen put in at a line end has U+00AD as its text; a line that ends
/// between words ends with its space, so that extracted text keeps its words apart.
struct TextItem {
  FontIndex font = 0;
  Length size = 0;
  Point at;
  Color color;
  int quarter_turns = 0;  ///< clockwise, about `at`: 1 runs down the page, 3 runs up (thumb tabs, turned table heads)
  std::string text;
  std::vector<Glyph> glyphs;
};

struct PathSegment {
  enum class Op { move, line, curve, close };
  Op op = Op::move;
  Point to;
  Point control1;
  Point control2;
};

struct PathItem {
  std::vector<PathSegment> segments;
  std::optional<Color> fill;
  std::optional<Color> stroke;
  Length stroke_width = 0;
  std::vector<Length> dash;
  bool even_odd = false;
};

/// A trust sign, set like a letter in its line: a reader that speaks says its words.
struct SignItem {
  model::Trust trust = model::Trust::memory;
  bool derived = false;
  Point at;         ///< left end on the baseline
  Length size = 0;  ///< as wide as high
};

/// Index into TagTree; the two negative values are content that no reader is told about.
using TagId = int;
inline constexpr TagId kLayoutArtifact = -1;      ///< rules, grounds, drawn ornaments
inline constexpr TagId kPaginationArtifact = -2;  ///< running heads, folios, thumb tabs, repeated table heads

enum class Role : std::uint8_t {
  document,
  part,
  sect,
  div,
  h1,
  h2,
  h3,
  h4,
  p,
  list,
  list_item,
  label,
  list_body,
  table,
  table_head,
  table_body,
  row,
  header_cell,
  data_cell,
  caption,
  figure,
  link,
  span,
  note,
  toc,
  toc_item,
  reference,
  index
};

/// What few elements have.
struct TagMore {
  std::string title;  ///< /T: the id of the fact a span prints
  std::string alt;    ///< alternative text of a figure
  std::string id;     ///< of header cells that `headers` name
  std::vector<std::string> headers;
  int column_span = 1;
  std::optional<Box> box;  ///< of a figure, on `box_page`
  int box_page = 0;
};

/// One structure element. Children follow the order in which their first content is placed; an element without content
/// stands after its elder sibling.
struct Tag {
  enum class Scope : std::uint8_t { none, row, column };
  Role role = Role::div;
  Scope scope = Scope::none;
  TagId parent = kLayoutArtifact;  ///< kLayoutArtifact only for the root, which is element 0 and a document

  Tag() = default;
  Tag(const Tag& other);
  Tag& operator=(const Tag& other);
  Tag(Tag&&) noexcept = default;
  Tag& operator=(Tag&&) noexcept = default;

  const TagMore& more() const;
  /// The same to be changed.
  TagMore& set();

 private:
  std::unique_ptr<TagMore> more_;  ///< a book has hundreds of thousands of elements: most go without
};

struct Item {
  TagId tag = kLayoutArtifact;
  std::variant<TextItem, PathItem, SignItem> what;
};

/// A place that can be clicked: to a destination of the same document.
struct LinkArea {
  Box box;
  std::string target;           ///< destination name
  std::string words;            ///< what the link says, for readers that speak it
  TagId tag = kLayoutArtifact;  ///< the link element it belongs to
};

/// So many items in a row that belong to one element.
struct TagRun {
  TagId tag = kLayoutArtifact;
  std::uint32_t count = 0;
};

struct Page {
  Length width = 0;
  Length height = 0;
  Length trim = 0;    ///< how far inside the paper the trimmed page begins, on all sides
  Length bleed = 0;   ///< the same of what is printed to be cut off
  std::string label;  ///< `iv`, `24`
  std::vector<Item> items;
  std::string packed;               ///< items that stand before `items`, as pack() of page/packed.h leaves them
  std::vector<TagRun> packed_tags;  ///< their elements
  std::vector<LinkArea> links;
};

struct Destination {
  int page = 0;  ///< from 0
  Length x = 0;
  Length y = 0;
};

struct Bookmark {
  int level = 1;
  std::string title;
  std::string target;
};

/// What a printer that prints both sides is told.
enum class Duplex : std::uint8_t {
  unsaid,
  one_side,    ///< labels: their back is not for printing
  top_to_top,  ///< the upper edge of each page lies behind that of the page before: over the long edge where pages stand
};

struct Document {
  std::string title;
  std::string subject;
  std::string language;
  std::string iso_date;  ///< `2026-11-01`: the only date that is written
  Duplex duplex = Duplex::unsaid;
  std::vector<Page> pages;
  std::vector<Tag> tags;  ///< tags[0] is the root
  std::map<std::string, Destination> destinations;
  std::vector<Bookmark> bookmarks;
};

}  // namespace benchleaf::page
