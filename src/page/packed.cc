// In: the items of a page. Out: the same as bytes, and back. Numbers are written seven bits a byte, places as steps from the
// item before; what the text before has already (font, size, colour) is not said again. Elements stand apart, as they are
// asked for and renamed alone.
#include "page/packed.h"

#include <cstddef>
#include <string_view>

namespace benchleaf::page {
namespace {

enum Kind : unsigned { kText = 0, kPath = 1, kSign = 2, kFresh = 3 };

constexpr unsigned kKindBits = 3;
constexpr unsigned kSameType = 4;  // font, size, colour, turns of the text before

// Of a path.
constexpr unsigned kFill = 1;
constexpr unsigned kStroke = 2;
constexpr unsigned kEvenOdd = 4;

// Of a glyph; the rest of the byte is how far on its cluster begins.
constexpr unsigned kShifted = 1;
constexpr unsigned kExtra = 2;
constexpr unsigned kStepShift = 2;
constexpr std::uint32_t kLongStep = 63;

/// What the next item is told apart from.
struct Before {
  Point at;
  FontIndex font = 0;
  Length size = 0;
  Color color;
  int quarter_turns = 0;

  bool has_type_of(const TextItem& text) const {
    return font == text.font && size == text.size && color == text.color && quarter_turns == text.quarter_turns;
  }
  void take_type_of(const TextItem& text) {
    font = text.font;
    size = text.size;
    color = text.color;
    quarter_turns = text.quarter_turns;
  }
};

class Packer {
 public:
  Packer(std::string& out, std::vector<TagRun>& tags) : out_(out), tags_(tags) { byte(kFresh); }

  void add(const Item& item) {
    const auto* text = std::get_if<TextItem>(&item.what);
    unsigned head = static_cast<unsigned>(item.what.index());
    if (text != nullptr && before_.has_type_of(*text)) head |= kSameType;
    byte(head);
    if (tags_.empty() || tags_.back().tag != item.tag) tags_.push_back({item.tag, 0});
    ++tags_.back().count;
    if (text != nullptr) {
      add_text(*text, (head & kSameType) != 0);
    } else if (const auto* path = std::get_if<PathItem>(&item.what)) {
      add_path(*path);
    } else {
      add_sign(std::get<SignItem>(item.what));
    }
  }

 private:
  void byte(unsigned value) { out_ += static_cast<char>(value & 0xFF); }
  void count(std::uint64_t value) {
    for (; value >= 0x80; value >>= 7) byte(static_cast<unsigned>(value & 0x7F) | 0x80);
    byte(static_cast<unsigned>(value));
  }
  /// Small numbers of either sign stay short.
  void number(std::int64_t value) {
    const auto bits = static_cast<std::uint64_t>(value);
    count(value < 0 ? ~bits << 1 | 1 : bits << 1);
  }
  void color(Color color) {
    byte(color.red);
    byte(color.green);
    byte(color.blue);
  }
  void point(Point point) {
    number(point.x - before_.at.x);
    number(point.y - before_.at.y);
    before_.at = point;
  }

  void add_text(const TextItem& text, bool same_type) {
    if (!same_type) {
      number(text.font);
      number(text.size);
      color(text.color);
      number(text.quarter_turns);
      before_.take_type_of(text);
    }
    point(text.at);
    count(text.text.size());
    out_ += text.text;
    count(text.glyphs.size());
    std::uint32_t cluster = 0;
    for (const Glyph& glyph : text.glyphs) {
      add_glyph(glyph, glyph.cluster - cluster);
      cluster = glyph.cluster;
    }
  }

  void add_glyph(const Glyph& glyph, std::uint32_t step) {
    const bool shifted = glyph.dx != 0 || glyph.dy != 0;
    const bool far = step >= kLongStep;
    byte((shifted ? kShifted : 0) | (glyph.extra != 0 ? kExtra : 0) | (far ? kLongStep : step) << kStepShift);
    if (far) count(step);
    count(glyph.id);
    number(glyph.advance);
    if (shifted) {
      number(glyph.dx);
      number(glyph.dy);
    }
    if (glyph.extra != 0) number(glyph.extra);
  }

  void add_path(const PathItem& path) {
    byte((path.fill ? kFill : 0) | (path.stroke ? kStroke : 0) | (path.even_odd ? kEvenOdd : 0));
    if (path.fill) color(*path.fill);
    if (path.stroke) color(*path.stroke);
    number(path.stroke_width);
    count(path.dash.size());
    for (const Length length : path.dash) number(length);
    count(path.segments.size());
    for (const PathSegment& segment : path.segments) {
      byte(static_cast<unsigned>(segment.op));
      if (segment.op == PathSegment::Op::close) continue;
      point(segment.to);
      if (segment.op != PathSegment::Op::curve) continue;
      point(segment.control1);
      point(segment.control2);
    }
  }

  void add_sign(const SignItem& sign) {
    byte(static_cast<unsigned>(sign.trust) << 1 | (sign.derived ? 1 : 0));
    point(sign.at);
    number(sign.size);
  }

  std::string& out_;
  std::vector<TagRun>& tags_;
  Before before_;
};

class Unpacker {
 public:
  explicit Unpacker(const Page& page) : bytes_(page.packed), tags_(page.packed_tags) {}

  /// Reads the next item into `item`, whose memory is used again; false at the end.
  bool next(Item& item) {
    while (at_ < bytes_.size()) {
      const unsigned head = byte();
      if ((head & kKindBits) == kFresh) {
        before_ = {};
        continue;
      }
      if (seen_ == tags_[run_].count) {
        ++run_;
        seen_ = 0;
      }
      ++seen_;
      item.tag = tags_[run_].tag;
      switch (head & kKindBits) {
        case kText: read_text(as<TextItem>(item), (head & kSameType) != 0); break;
        case kPath: read_path(as<PathItem>(item)); break;
        default: read_sign(as<SignItem>(item)); break;
      }
      return true;
    }
    return false;
  }

 private:
  template <class What>
  static What& as(Item& item) {
    if (!std::holds_alternative<What>(item.what)) item.what = What{};
    return std::get<What>(item.what);
  }

  unsigned byte() { return static_cast<unsigned char>(bytes_[at_++]); }
  std::uint64_t count() {
    std::uint64_t value = 0;
    unsigned shift = 0;
    unsigned part = byte();
    for (; part >= 0x80; part = byte(), shift += 7) value |= static_cast<std::uint64_t>(part & 0x7F) << shift;
    return value | static_cast<std::uint64_t>(part) << shift;
  }
  std::int64_t number() {
    const std::uint64_t bits = count();
    return static_cast<std::int64_t>((bits & 1) != 0 ? ~(bits >> 1) : bits >> 1);
  }
  Color color() {
    Color color;
    color.red = static_cast<std::uint8_t>(byte());
    color.green = static_cast<std::uint8_t>(byte());
    color.blue = static_cast<std::uint8_t>(byte());
    return color;
  }
  Point point() {
    before_.at.x += number();
    before_.at.y += number();
    return before_.at;
  }

  void read_text(TextItem& text, bool same_type) {
    if (!same_type) {
      before_.font = static_cast<FontIndex>(number());
      before_.size = number();
      before_.color = color();
      before_.quarter_turns = static_cast<int>(number());
    }
    text.font = before_.font;
    text.size = before_.size;
    text.color = before_.color;
    text.quarter_turns = before_.quarter_turns;
    text.at = point();
    const std::size_t size = count();
    text.text.assign(bytes_.substr(at_, size));
    at_ += size;
    text.glyphs.resize(count());
    std::uint32_t cluster = 0;
    for (Glyph& glyph : text.glyphs) {
      glyph = read_glyph(cluster);
      cluster = glyph.cluster;
    }
  }

  Glyph read_glyph(std::uint32_t cluster) {
    const unsigned head = byte();
    std::uint32_t step = head >> kStepShift;
    if (step == kLongStep) step = static_cast<std::uint32_t>(count());
    Glyph glyph;
    glyph.cluster = cluster + step;
    glyph.id = static_cast<std::uint32_t>(count());
    glyph.advance = static_cast<std::int32_t>(number());
    if ((head & kShifted) != 0) {
      glyph.dx = static_cast<std::int32_t>(number());
      glyph.dy = static_cast<std::int32_t>(number());
    }
    if ((head & kExtra) != 0) glyph.extra = number();
    return glyph;
  }

  void read_path(PathItem& path) {
    const unsigned head = byte();
    path.fill.reset();
    path.stroke.reset();
    if ((head & kFill) != 0) path.fill = color();
    if ((head & kStroke) != 0) path.stroke = color();
    path.even_odd = (head & kEvenOdd) != 0;
    path.stroke_width = number();
    path.dash.resize(count());
    for (Length& length : path.dash) length = number();
    path.segments.resize(count());
    for (PathSegment& segment : path.segments) {
      segment = {};
      segment.op = static_cast<PathSegment::Op>(byte());
      if (segment.op == PathSegment::Op::close) continue;
      segment.to = point();
      if (segment.op != PathSegment::Op::curve) continue;
      segment.control1 = point();
      segment.control2 = point();
    }
  }

  void read_sign(SignItem& sign) {
    const unsigned head = byte();
    sign.trust = static_cast<model::Trust>(head >> 1);
    sign.derived = (head & 1) != 0;
    sign.at = point();
    sign.size = number();
  }

  std::string_view bytes_;
  const std::vector<TagRun>& tags_;
  std::size_t at_ = 0;
  std::size_t run_ = 0;
  std::uint32_t seen_ = 0;  ///< items of the run
  Before before_;
};

}  // namespace

void pack(Page& page) {
  if (page.items.empty()) return;
  Packer packer(page.packed, page.packed_tags);
  for (const Item& item : page.items) packer.add(item);
  page.items = std::vector<Item>();  // `{}` would keep the room
  page.packed.shrink_to_fit();
  page.packed_tags.shrink_to_fit();
}

void unpack(Page& page) {
  if (page.packed.empty()) return;
  page.items = items_of(page);
  page.packed = std::string();
  page.packed_tags = std::vector<TagRun>();
}

void for_each_item(const Page& page, const std::function<void(const Item&)>& see) {
  Unpacker packed(page);
  for (Item item; packed.next(item);) see(item);
  for (const Item& item : page.items) see(item);
}

void for_each_tag(const Page& page, const std::function<void(TagId)>& see) {
  for (const TagRun& run : page.packed_tags) see(run.tag);
  for (const Item& item : page.items) see(item.tag);
}

void move_tags(Page& page, const std::vector<TagId>& moved) {
  const auto move = [&moved](TagId& tag) {
    if (tag >= 0) tag = moved.at(static_cast<std::size_t>(tag));
  };
  for (TagRun& run : page.packed_tags) move(run.tag);
  for (Item& item : page.items) move(item.tag);
}

void drop_items(Page& page) {
  page.items = std::vector<Item>();
  page.packed = std::string();
  page.packed_tags = std::vector<TagRun>();
}

std::vector<Item> items_of(const Page& page) {
  std::vector<Item> items;
  for_each_item(page, [&items](const Item& item) { items.push_back(item); });
  return items;
}

bool is_empty(const Page& page) { return page.items.empty() && page.packed.empty(); }

}  // namespace benchleaf::page
