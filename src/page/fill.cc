// In: the strips of a chapter in order. Out: pages with the strips in place, destinations, slots with their pages.
//
// One greedy pass. A chain of strips tied by keep_next moves as one; the legend's room is given up only once a page
// carries a trust sign.
#include "page/fill.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "page/packed.h"

namespace benchleaf::page {
namespace {

/// Behind the last strip that moves together with strip `first`.
std::size_t chain_end(const Strips& strips, std::size_t first) {
  std::size_t last = first;
  while (last + 1 < strips.size() && strips[last].keep_next && !strips[last + 1].new_page) ++last;
  return last + 1;
}

}  // namespace

void PageFiller::take(Galley& galley) {
  const std::size_t placed = place_chains(galley, false);
  galley.begun = galley.begun || placed > 0;
  galley.strips.erase(galley.strips.begin(), galley.strips.begin() + static_cast<std::ptrdiff_t>(placed));
}

void PageFiller::finish(Galley& galley) {
  place_chains(galley, true);
  galley.strips.clear();
  if (page_ >= 0) pack(stack_.pages.back());
}

/// How many strips were placed.
std::size_t PageFiller::place_chains(Galley& galley, bool all) {
  Strips& strips = galley.strips;
  std::size_t i = 0;
  while (i < strips.size()) {
    std::size_t end = chain_end(strips, i);
    if (!all && end == strips.size()) break;
    if (page_ < 0 || strips[i].new_page || (y_ > 0 && !fits(galley, i, end))) open_page();
    if (!fits(galley, i, end)) end = i + 1;  // taller than a page: the keep gives way
    for (; i < end; ++i) place(galley, std::move(strips[i]));
  }
  return i;
}

/// Whether the strips from `first` to before `end` fit on what is left of the page.
bool PageFiller::fits(const Galley& galley, std::size_t first, std::size_t end) const {
  Length y = y_;
  bool signs = page_ >= 0 && stack_.notes.back().signs;
  for (std::size_t i = first; i < end; ++i) {
    const Strip& strip = galley.strips[i];
    if (y > 0) {
      y += strip.before;
    } else if (strip.head >= 0) {
      y += galley.heads[static_cast<std::size_t>(strip.head)].height;
    }
    y += strip.height;
    signs = signs || strip.signs;
  }
  return y <= paper_.block_height - (signs ? legend_height() : 0);
}

void PageFiller::open_page() {
  if (page_ >= 0) pack(stack_.pages.back());
  Page page;
  page.width = paper_.width;
  page.height = paper_.height;
  stack_.pages.push_back(std::move(page));
  stack_.notes.push_back({chapter_, {}, {}, false, false});
  page_ = static_cast<int>(stack_.pages.size()) - 1;
  y_ = 0;
  note_bottom_ = 0;
}

void PageFiller::place(const Galley& galley, Strip strip) {
  if (y_ > 0) {
    y_ += strip.before;
  } else if (strip.head >= 0) {
    const Strip& head = galley.heads[static_cast<std::size_t>(strip.head)];
    put(head);
    y_ += head.height;
  }
  const Length height = strip.height;
  put(std::move(strip));
  y_ += height;
}

void PageFiller::put(Strip strip) {
  const Side side = stack_.side(page_);
  shift(strip, paper_.block_left(side), paper_.block_top + y_);
  Page& page = stack_.pages.back();
  PageNotes& notes = stack_.notes.back();
  if (!strip.running.empty()) {
    if (notes.first_running.empty()) notes.first_running = strip.running;
    notes.last_running = strip.running_end.empty() ? strip.running : strip.running_end;
  }
  notes.signs = notes.signs || strip.signs;
  notes.true_size = notes.true_size || strip.true_size;
  std::move(strip.items.begin(), strip.items.end(), std::back_inserter(page.items));
  std::move(strip.links.begin(), strip.links.end(), std::back_inserter(page.links));
  for (Slot& slot : strip.slots) stack_.slots.push_back({page_, std::move(slot)});
  for (Place& place : strip.places) {
    stack_.destinations.emplace(std::move(place.anchor), Destination{page_, paper_.block_left(side), place.y});
  }
  for (MarginBox& note : strip.margin) put_note(note, side, page);
}

/// A note stands beside its strip, or just under the note before it.
void PageFiller::put_note(MarginBox& note, Side side, Page& page) {
  const Length top = std::max(note.y, note_bottom_);
  note_bottom_ = top + note.height;
  const Length left = side == Side::recto ? paper_.inner + paper_.block_width + paper_.note_gap
                                          : paper_.block_left(side) - paper_.note_gap - paper_.note_width;
  std::vector<Item>& items = side == Side::recto ? note.recto : note.verso;
  for (Item& item : items) {
    shift(item, left, top);
    page.items.push_back(std::move(item));
  }
}

Length legend_height() { return from_mm(13); }

void fill_pages(Galley galley, const Paper& paper, int chapter, PageStack& stack) {
  PageFiller(paper, chapter, stack).finish(galley);
}

void fill_columns(const Strips& first, const Strips& strips, int columns, const Paper& paper, int chapter, PageStack& stack) {
  const Length gutter = from_mm(5);
  const Length width = (paper.block_width - (columns - 1) * gutter) / columns;
  Galley galley;
  Strip top = stacked(first);
  Length room = paper.block_height - (first.empty() ? 0 : top.height + from_mm(4));
  std::size_t i = 0;
  while (i < strips.size()) {
    Strip page;
    page.new_page = true;
    page.height = room;
    const Length offset = paper.block_height - room;
    if (galley.strips.empty() && !first.empty()) overlay(page, top, 0, 0);
    for (int column = 0; column < columns && i < strips.size(); ++column) {
      Length y = 0;
      while (i < strips.size()) {
        // A heading word never ends a column alone.
        std::size_t end = i + 1;
        Length height = strips[i].height + (y > 0 ? strips[i].before : 0);
        while (strips[end - 1].keep_next && end < strips.size()) height += strips[end].before + strips[end].height, ++end;
        if (y > 0 && y + height > room) break;
        for (; i < end; ++i) {
          if (y > 0) y += strips[i].before;
          overlay(page, strips[i], column * (width + gutter), offset + y);
          y += strips[i].height;
        }
      }
    }
    page.height = paper.block_height;
    galley.strips.push_back(std::move(page));
    room = paper.block_height;
  }
  fill_pages(std::move(galley), paper, chapter, stack);
}

}  // namespace benchleaf::page
