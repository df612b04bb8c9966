// In: the strips of a chapter in order. Out: pages with the strips in place, destinations, slots with their pages.
//
// One greedy pass over units: a chain of strips tied by keep_next moves as one; strips of columns are spread evenly over
// them; work that must not cross a page turn takes the first place where it does not, out of turn where that fills a page.
#include "page/fill.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "page/columns.h"
#include "page/packed.h"

namespace benchleaf::page {
namespace {

/// Less than this of what goes on in columns is not begun at the foot of a page.
constexpr double kLeastColumnsMm = 14;
/// Less than this of a job is not begun on the left page for the right one to end.
constexpr double kLeastBeginningMm = 60;

/// Behind the last strip that moves together with strip `first`.
std::size_t chain_end(const Strips& strips, std::size_t first) {
  std::size_t last = first;
  while (last + 1 < strips.size() && strips[last].keep_next && !strips[last + 1].new_page && strips[last + 1].columns == 1)
    ++last;
  return last + 1;
}

/// Behind the last strip of the job, or of the columns, that strip `first` begins.
std::size_t run_end(const Strips& strips, std::size_t first) {
  std::size_t end = first + 1;
  while (end < strips.size() && !strips[end].new_page && strips[end].columns == strips[first].columns &&
         strips[end].spread == strips[first].spread)
    ++end;
  return end;
}

}  // namespace

void append(PageStack& stack, PageStack tail) {
  const int offset = static_cast<int>(stack.pages.size());
  std::move(tail.pages.begin(), tail.pages.end(), std::back_inserter(stack.pages));
  std::move(tail.notes.begin(), tail.notes.end(), std::back_inserter(stack.notes));
  for (auto& [anchor, place] : tail.destinations) {
    place.page += offset;
    stack.destinations.emplace(anchor, place);
  }
  for (PendingSlot& slot : tail.slots) {
    slot.page += offset;
    stack.slots.push_back(std::move(slot));
  }
}

void PageFiller::take(Galley& galley) {
  const std::size_t placed = place_units(galley, false);
  galley.begun = galley.begun || placed > 0;
  galley.strips.erase(galley.strips.begin(), galley.strips.begin() + static_cast<std::ptrdiff_t>(placed));
}

void PageFiller::finish(Galley& galley) {
  place_units(galley, true);
  galley.strips.clear();
  if (page_ >= 0) pack(stack_.pages.back());
}

std::size_t PageFiller::unit_end(const Strips& strips, std::size_t first) const {
  return strips[first].columns > 1 ? run_end(strips, first) : chain_end(strips, first);
}

/// How many strips were placed.
std::size_t PageFiller::place_units(Galley& galley, bool all) {
  Strips& strips = galley.strips;
  std::size_t i = 0;
  while (i < strips.size()) {
    if (strips[i].spread != 0) {
      const std::size_t end = place_spreads(galley, i, all);
      if (end == i) break;
      i = end;
      continue;
    }
    const std::size_t end = unit_end(strips, i);
    if (!all && end == strips.size()) break;
    if (strips[i].columns > 1)
      place_columns(galley, i, end);
    else
      place_chain(galley, i, end);
    i = end;
  }
  return i;
}

void PageFiller::place_chain(Galley& galley, std::size_t first, std::size_t end) {
  Strips& strips = galley.strips;
  if (page_ < 0 || strips[first].new_page || (y_ > 0 && !fits(galley, first, end))) open_page();
  if (fits(galley, first, end)) {
    for (std::size_t i = first; i < end; ++i) place(galley, std::move(strips[i]));
    return;
  }
  for (std::size_t i = first; i < end; ++i) {  // taller than a page: the keep gives way
    if (y_ > 0 && !fits(galley, i, i + 1)) open_page();
    place(galley, std::move(strips[i]));
  }
}

void PageFiller::place_chains(Galley& galley, std::size_t first, std::size_t end) {
  while (first < end) {
    const std::size_t behind = std::min(end, chain_end(galley.strips, first));
    place_chain(galley, first, behind);
    first = behind;
  }
}

/// As even as they go on the rest of the page, and on new ones.
void PageFiller::place_columns(Galley& galley, std::size_t first, std::size_t end) {
  Strips& strips = galley.strips;
  if (page_ < 0 || strips[first].new_page) open_page();
  while (first < end) {
    const Length before = y_ > 0 ? strips[first].before : 0;
    const Length room = paper_.block_height - y_ - before;
    ColumnBreaks breaks = column_breaks(galley, first, end, room);
    if (y_ > 0 && (breaks.height > room || (breaks.end < end && room < from_mm(kLeastColumnsMm)))) {
      open_page();
      continue;
    }
    const int columns = strips[first].columns;
    const Length step = column_width(paper_.block_width, columns) + from_mm(5);
    y_ += before;
    for (const ColumnPlace& one : breaks.places) {
      if (one.head >= 0) put(galley.heads[static_cast<std::size_t>(one.head)], one.column * step, y_ + one.head_y);
      put(std::move(strips[one.strip]), one.column * step, y_ + one.y);
    }
    y_ += breaks.height;
    first = breaks.end;
    if (first < end) open_page();
  }
}

/// Whether a job goes on the rest of the page, or of the spread with no more than a fold in it.
bool PageFiller::goes_here(const Galley& galley, std::size_t first, std::size_t end) const {
  if (page_ < 0) return false;
  if (fits(galley, first, end)) return true;
  if (side() == Side::recto) return false;
  // The chains that go on this page, then all the others on the next one.
  std::size_t at = first;
  Length y = y_;
  while (at < end) {
    const std::size_t behind = std::min(end, chain_end(galley.strips, at));
    const Length grown = height_of(galley, at, behind, y);
    if (grown > paper_.block_height) break;
    y = grown;
    at = behind;
  }
  const bool begins = y - y_ >= from_mm(kLeastBeginningMm) || y_ == 0;
  return begins && height_of(galley, at, end, 0) <= paper_.block_height;
}

/// Jobs in their order, but the place that one leaves on its page or spread goes to the longest of those behind it that fits.
/// How far it came.
std::size_t PageFiller::place_spreads(Galley& galley, std::size_t first, bool all) {
  const Strips& strips = galley.strips;
  std::vector<std::pair<std::size_t, std::size_t>> jobs;
  std::size_t end = first;
  while (end < strips.size() && strips[end].spread != 0) {
    const std::size_t behind = run_end(strips, end);
    jobs.emplace_back(end, behind);
    end = behind;
  }
  if (!all && end == strips.size()) return first;
  if (page_ < 0) open_page();
  const auto height = [&](const auto& job) { return height_of(galley, job.first, job.second, 0); };
  while (!jobs.empty()) {
    auto next = jobs.end();
    for (auto job = jobs.begin(); job != jobs.end(); ++job) {
      const bool longer = next == jobs.end() || height(*job) > height(*next);
      if (longer && goes_here(galley, job->first, job->second)) next = job;
      if (y_ == 0 && next != jobs.end()) break;  // a page begins with the next in turn
    }
    if (next == jobs.end()) {
      if (y_ > 0 || side() == Side::recto) {
        open_page();
        continue;
      }
      next = jobs.begin();  // longer than a spread: it has to turn
    }
    place_chains(galley, next->first, next->second);
    jobs.erase(next);
  }
  return end;
}

/// How far down the page the strips from `first` to before `end` reach when they begin at `y`.
Length PageFiller::height_of(const Galley& galley, std::size_t first, std::size_t end, Length y) const {
  for (std::size_t i = first; i < end; ++i) {
    const Strip& strip = galley.strips[i];
    if (y > 0) {
      y += strip.before;
    } else if (strip.head >= 0) {
      y += galley.heads[static_cast<std::size_t>(strip.head)].height;
    }
    y += strip.height;
  }
  return y;
}

/// Whether the strips from `first` to before `end` fit on what is left of the page, with some of the columns that they head.
bool PageFiller::fits(const Galley& galley, std::size_t first, std::size_t end) const {
  const Strips& strips = galley.strips;
  Length y = height_of(galley, first, end, y_);
  const bool heads_columns = end < strips.size() && strips[end - 1].keep_next && strips[end].columns > 1;
  if (heads_columns && y_ > 0)
    y += strips[end].before + std::max(from_mm(kLeastColumnsMm), first_chain_height(galley, end, run_end(strips, end)));
  return y <= paper_.block_height;
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
}

void PageFiller::place(const Galley& galley, Strip strip) {
  if (y_ > 0) {
    y_ += strip.before;
  } else if (strip.head >= 0) {
    const Strip& head = galley.heads[static_cast<std::size_t>(strip.head)];
    put(head, 0, y_);
    y_ += head.height;
  }
  const Length height = strip.height;
  put(std::move(strip), 0, y_);
  y_ += height;
}

void PageFiller::put(Strip strip, Length x, Length y) {
  shift(strip, paper_.block_left(side()) + x, paper_.block_top + y);
  Page& page = stack_.pages.back();
  PageNotes& notes = stack_.notes.back();
  if (notes.first_running.empty()) {
    notes.continued = strip.running.empty() && !begun_.empty();
    notes.first_running = notes.continued ? begun_ : strip.running;
    notes.last_running = notes.first_running;
  }
  if (!strip.running.empty()) begun_ = notes.last_running = strip.running_end.empty() ? strip.running : strip.running_end;
  notes.true_size = notes.true_size || strip.true_size;
  std::move(strip.items.begin(), strip.items.end(), std::back_inserter(page.items));
  std::move(strip.links.begin(), strip.links.end(), std::back_inserter(page.links));
  for (Slot& slot : strip.slots) stack_.slots.push_back({page_, std::move(slot)});
  for (Place& place : strip.places) {
    stack_.destinations.emplace(std::move(place.anchor), Destination{page_, paper_.block_left(side()) + x, place.y});
  }
}

void fill_pages(Galley galley, const Paper& paper, int chapter, PageStack& stack) {
  PageFiller(paper, chapter, stack).finish(galley);
}

void fill_columns(const Strips& first, const Strips& strips, int columns, const Paper& paper, int chapter, PageStack& stack) {
  const Length gutter = from_mm(5);
  const Length width = column_width(paper.block_width, columns);
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
