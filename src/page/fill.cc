// In: the strips of a chapter in order. Out: pages with the strips in place, destinations, slots with their pages.
//
// One greedy pass over units: a chain of strips tied by keep_next moves as one; strips of columns are spread evenly over
// them; work that must not cross a page turn takes the first place where it does not, out of turn where that fills a page.
#include "page/fill.h"

#include <algorithm>
#include <iterator>
#include <optional>
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

/// A heading over the first of several jobs goes where that one goes.
void join_to_job(Strips& strips, std::size_t first) {
  const std::size_t end = chain_end(strips, first);
  const int spread = strips[end - 1].spread;
  for (std::size_t i = first; i < end && spread != 0; ++i) strips[i].spread = spread;
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
    if (strips[i].spread == 0 && strips[i].keep_next) join_to_job(strips, i);
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

/// Where a job that begins at a place of a spread ends, its chains one after the other; nothing where it would turn the page.
/// Less than a sensible beginning is not put at the foot of the left page.
std::optional<SpreadPlace> PageFiller::behind(const Galley& galley, const Job& job, SpreadPlace at) const {
  const SpreadPlace start = at;
  for (std::size_t i = job.first; i < job.end;) {
    const std::size_t end = std::min(job.end, chain_end(galley.strips, i));
    Length grown = height_of(galley, i, end, at.y);
    if (grown > paper_.block_height) {
      if (at.recto) return std::nullopt;
      if (start.y > 0 && at.y - start.y < from_mm(kLeastBeginningMm)) return behind(galley, job, {true, 0});
      at = {true, 0};
      grown = height_of(galley, i, end, 0);
      if (grown > paper_.block_height) return std::nullopt;
    }
    at.y = grown;
    i = end;
  }
  return at;
}

/// Adds to `plan` the jobs that fill the rest of the spread best, three at most; those before `from` stay where they are.
void PageFiller::plan_spread(const Galley& galley, const Jobs& jobs, std::size_t from, SpreadPlace at, const Plan& begun,
                             Plan& best) const {
  constexpr std::size_t kMost = 3;
  if (begun.height > best.height) best = begun;
  if (begun.jobs.size() == kMost) return;
  for (std::size_t i = from; i < jobs.size(); ++i) {
    const auto place = behind(galley, jobs[i], at);
    if (!place) continue;
    Plan grown = begun;
    grown.jobs.push_back(i);
    grown.height += jobs[i].height;
    plan_spread(galley, jobs, i + 1, *place, grown, best);
  }
}

/// The next jobs for the rest of the spread; a fresh one begins with the job in turn.
PageFiller::Plan PageFiller::next_jobs(const Galley& galley, const Jobs& jobs) const {
  const SpreadPlace at{side() == Side::recto, y_};
  Plan best;
  if (at.recto || at.y > 0) {
    plan_spread(galley, jobs, 0, at, {}, best);
  } else if (const auto place = behind(galley, jobs.front(), at)) {
    plan_spread(galley, jobs, 1, *place, {{0}, jobs.front().height}, best);
  }
  return best;
}

PageFiller::Jobs PageFiller::jobs_from(const Galley& galley, std::size_t first) const {
  Jobs jobs;
  while (first < galley.strips.size() && galley.strips[first].spread != 0) {
    const std::size_t end = run_end(galley.strips, first);
    jobs.push_back({first, end, height_of(galley, first, end, 0)});
    first = end;
  }
  return jobs;
}

/// Jobs nearly in their order: what one leaves of its spread goes to those behind it that fill it best. How far it came.
std::size_t PageFiller::place_spreads(Galley& galley, std::size_t first, bool all) {
  Jobs jobs = jobs_from(galley, first);
  const std::size_t end = jobs.back().end;
  if (!all && end == galley.strips.size()) return first;
  if (page_ < 0) open_page();
  while (!jobs.empty()) {
    Plan plan = next_jobs(galley, jobs);
    if (plan.jobs.empty() && (y_ > 0 || side() == Side::recto)) {
      open_page();
      continue;
    }
    if (plan.jobs.empty()) plan.jobs.push_back(0);  // longer than a spread: it has to turn
    for (const std::size_t job : plan.jobs) {
      const SpreadPlace at{side() == Side::recto, y_};
      const bool waits = !at.recto && at.y > 0 && starts_recto(galley, jobs[job], at);
      if (waits) open_page();
      place_chains(galley, jobs[job].first, jobs[job].end);
    }
    for (std::size_t i = plan.jobs.size(); i-- > 0;) jobs.erase(jobs.begin() + static_cast<std::ptrdiff_t>(plan.jobs[i]));
  }
  return end;
}

/// Whether a job would leave too short a beginning at the foot of the left page.
bool PageFiller::starts_recto(const Galley& galley, const Job& job, SpreadPlace at) const {
  Length y = at.y;
  for (std::size_t i = job.first; i < job.end;) {
    const std::size_t end = std::min(job.end, chain_end(galley.strips, i));
    const Length grown = height_of(galley, i, end, y);
    if (grown > paper_.block_height) return y - at.y < from_mm(kLeastBeginningMm);
    y = grown;
    i = end;
  }
  return false;
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
