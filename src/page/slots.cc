// In: pages with slots as wide as the widest number. Out: the numbers in them, and the rest of each line moved up to its
// number; a justified line is stretched again, so that its end stays at the margin.
#include "page/slots.h"

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <string_view>
#include <utility>
#include <vector>

#include "page/packed.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

constexpr double kSpaceShare = 0.25;  // of the type size, about what a space is wide

Length left_end(const Item& item) {
  if (const auto* text = std::get_if<TextItem>(&item.what)) return text->at.x;
  if (const auto* sign = std::get_if<SignItem>(&item.what)) return sign->at.x;
  Length left = std::numeric_limits<Length>::max();
  for (const PathSegment& segment : std::get<PathItem>(item.what).segments) {
    if (segment.op != PathSegment::Op::close) left = std::min(left, segment.to.x);
  }
  return left;
}

/// Words and signs stand within the type size of the baseline; grounds and rules of the page do not.
bool stands_on(const Item& item, Length baseline, Length size) {
  if (const auto* text = std::get_if<TextItem>(&item.what)) {
    return text->quarter_turns == 0 && std::abs(text->at.y - baseline) < size / 2;
  }
  if (const auto* sign = std::get_if<SignItem>(&item.what)) return std::abs(sign->at.y - baseline) < size / 2;
  const auto& segments = std::get<PathItem>(item.what).segments;
  return std::all_of(segments.begin(), segments.end(), [&](const PathSegment& segment) {
    return segment.op == PathSegment::Op::close || std::abs(segment.to.y - baseline) < size;
  });
}

std::size_t spaces_in(const Item& item) {
  const auto* text = std::get_if<TextItem>(&item.what);
  if (text == nullptr) return 0;
  return static_cast<std::size_t>(std::count(text->text.begin(), text->text.end(), ' '));
}

void stretch_spaces(Item& item, Length share) {
  auto* text = std::get_if<TextItem>(&item.what);
  if (text == nullptr) return;
  for (Glyph& glyph : text->glyphs) {
    if (text->text[glyph.cluster] == ' ') glyph.extra += share;
  }
}

/// The line that a slot stands in. Places on it are moved by a function of the place.
class SlotLine {
 public:
  SlotLine(const Slot& slot, Page& page) : left_(slot.at.x - slot.before), baseline_(slot.at.y), page_(page) {
    right_ = slot.at.x + slot.width + slot.after;
    const auto size = static_cast<Length>(slot.size_pt * kPt);
    for (Item& item : page.items) {
      if (!stands_on(item, baseline_, size)) continue;
      const Length x = left_end(item);
      if (x >= left_ && x <= right_) items_.push_back({x, &item});
    }
    std::stable_sort(items_.begin(), items_.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  }

  /// Moves what stands at `end` or behind it to the left. `slots` are the ones of this line that come later.
  void close_up(Length end, Length surplus, const std::vector<Slot*>& slots) {
    move(slots, [=](Length x) { return x >= end ? x - surplus : x; });
    right_ -= surplus;
  }

  /// Makes the line `surplus` longer by its spaces.
  void stretch(Length surplus, const std::vector<Slot*>& slots) {
    std::size_t spaces = 0;
    for (const auto& [x, item] : items_) spaces += spaces_in(*item);
    if (items_.size() < 2 || spaces < 2) return;
    spaces -= 1;  // the one at the line's end is never seen
    const Length share = surplus / static_cast<Length>(spaces);
    const auto line = items_;
    const auto moved = [&line, share](Length place) {
      Length x = place;
      for (const auto& [start, item] : line) x += start < place ? share * static_cast<Length>(spaces_in(*item)) : 0;
      return x;
    };
    move(slots, moved);
    for (const auto& [x, item] : items_) stretch_spaces(*item, share);
  }

 private:
  template <class Move>
  void move(const std::vector<Slot*>& slots, const Move& moved) {
    for (LinkArea& link : page_.links) {
      const bool here =
          link.box.top <= baseline_ && link.box.bottom >= baseline_ && link.box.left >= left_ && link.box.left <= right_;
      if (!here) continue;
      link.box.left = moved(link.box.left);
      link.box.right = moved(link.box.right);
    }
    for (Slot* slot : slots) {
      const Length step = moved(slot->at.x) - slot->at.x;
      slot->at.x += step;
      slot->before += step;
      slot->after -= step;
    }
    for (auto& [x, item] : items_) {
      const Length to = moved(x);
      shift(*item, to - x, 0);
      x = to;
    }
  }

  Length left_;
  Length right_ = 0;
  Length baseline_;
  Page& page_;
  std::vector<std::pair<Length, Item*>> items_;
};

/// Slots of the same line that come after number `at`.
std::vector<Slot*> later_on_line(std::vector<PendingSlot>& slots, std::size_t at) {
  const PendingSlot& first = slots[at];
  const Length right = first.slot.at.x + first.slot.width + first.slot.after;
  std::vector<Slot*> later;
  for (std::size_t i = at + 1; i < slots.size() && slots[i].page == first.page; ++i) {
    Slot& slot = slots[i].slot;
    if (slot.at.y == first.slot.at.y && slot.at.x > first.slot.at.x && slot.at.x <= right) later.push_back(&slot);
  }
  return later;
}

}  // namespace

void fill_slots(Setting& setting, const PageNumbers& numbers, PageStack& stack) {
  int open = -1;  // the page whose items lie loose
  for (std::size_t i = 0; i < stack.slots.size(); ++i) {
    const Slot slot = stack.slots[i].slot;
    Page& page = stack.pages[static_cast<std::size_t>(stack.slots[i].page)];
    if (open != stack.slots[i].page) {
      if (open >= 0) pack(stack.pages[static_cast<std::size_t>(open)]);
      open = stack.slots[i].page;
      unpack(page);
    }
    const auto number = numbers.find(slot.target);
    if (number == numbers.end()) {
      setting.findings.add(report::Rule::page_lost_place, {}, "no page is known for '" + slot.target + "'",
                           "link to a record or a heading");
      continue;
    }
    // Whoever stands on the page needs not be sent there; the space before the number goes too.
    // A number that stands alone in a table stays, since nothing else would say where.
    const bool alone = slot.before == 0 && slot.after == 0;
    const bool here = !alone && stack.notes[static_cast<std::size_t>(stack.slots[i].page)].chapter >= 0 &&
                      std::to_string(stack.slots[i].page + 1) == number->second;
    if (here) {
      SlotLine rest(slot, page);
      const Length gone = slot.width + static_cast<Length>(slot.size_pt * kSpaceShare * kPt);
      const std::vector<Slot*> later = later_on_line(stack.slots, i);
      if (!slot.flush_right) rest.close_up(slot.at.x + slot.width, gone, later);
      if (slot.justified) rest.stretch(gone, later);
      continue;
    }
    PlainLine line = set_plain(setting, "p.\u00A0" + number->second, look::page_reference(slot.size_pt), slot.tag);
    const Length surplus = slot.width - line.width;
    for (Item& item : line.items) {
      shift(item, slot.at.x + (slot.flush_right ? surplus : 0), slot.at.y);
      page.items.push_back(std::move(item));
    }
    if (slot.flush_right || surplus <= 0) continue;
    const std::vector<Slot*> later = later_on_line(stack.slots, i);
    SlotLine rest(slot, page);
    rest.close_up(slot.at.x + slot.width, surplus, later);
    if (slot.justified) rest.stretch(surplus, later);
  }
  if (open >= 0) pack(stack.pages[static_cast<std::size_t>(open)]);
}

}  // namespace benchleaf::page
