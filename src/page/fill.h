#pragma once

#include <optional>
#include <string>
#include <vector>

#include "page/display.h"
#include "page/paper.h"
#include "page/strip.h"

namespace benchleaf::page {

/// A slot on its page, waiting for the numbers to be known.
struct PendingSlot {
  int page = 0;
  Slot slot;
};

/// What the furniture of a page needs to know about it.
struct PageNotes {
  int chapter = 0;  ///< index into the book's chapters; -1 in the front matter
  std::string first_running;
  std::string last_running;
  bool continued = false;  ///< whether the first entry began on a page before
  bool true_size = false;
};

/// How far down which of two facing pages.
struct SpreadPlace {
  bool recto = false;
  Length y = 0;
};

/// Pages under construction: the placing pass puts strips on them, the filling pass numbers, heads and tabs.
struct PageStack {
  std::vector<Page> pages;
  std::vector<PageNotes> notes;
  std::map<std::string, Destination> destinations;
  std::vector<PendingSlot> slots;

  Side side(int page) const { return page % 2 == 0 ? Side::recto : Side::verso; }
};

/// Puts `tail` behind `stack`, whose pages must be even in number: what was set for a left page stays on one.
void append(PageStack& stack, PageStack tail);

/// Puts the strips of one chapter on new pages behind the last one, as they come. Keeps hold; one that is taller than a page
/// gives way.
class PageFiller {
 public:
  PageFiller(const Paper& paper, int chapter, PageStack& stack) : paper_(paper), chapter_(chapter), stack_(stack) {}

  /// Takes out and places the strips whose keeps are known. The last ones wait for what follows them.
  void take(Galley& galley);
  /// Places what is left.
  void finish(Galley& galley);

 private:
  std::size_t place_units(Galley& galley, bool all);
  std::size_t unit_end(const Strips& strips, std::size_t first) const;
  void place_chain(Galley& galley, std::size_t first, std::size_t end);
  void place_chains(Galley& galley, std::size_t first, std::size_t end);
  void place_columns(Galley& galley, std::size_t first, std::size_t end);
  std::size_t place_spreads(Galley& galley, std::size_t first, bool all);
  /// The strips of a job, and its height on a page of its own.
  struct Job {
    std::size_t first = 0, end = 0;
    Length height = 0;
  };
  using Jobs = std::vector<Job>;
  /// Which jobs come next, and their height.
  struct Plan {
    std::vector<std::size_t> jobs;
    Length height = 0;
  };
  std::optional<SpreadPlace> behind(const Galley& galley, const Job& job, SpreadPlace at) const;
  void plan_spread(const Galley& galley, const Jobs& jobs, std::size_t from, SpreadPlace at, const Plan& begun, Plan& best) const;
  Plan next_jobs(const Galley& galley, const Jobs& jobs) const;
  Jobs jobs_from(const Galley& galley, std::size_t first) const;
  bool starts_recto(const Galley& galley, const Job& job, SpreadPlace at) const;
  Length height_of(const Galley& galley, std::size_t first, std::size_t end, Length y) const;
  bool fits(const Galley& galley, std::size_t first, std::size_t end) const;
  Side side() const { return stack_.side(page_); }
  void open_page();
  void place(const Galley& galley, Strip strip);
  void put(Strip strip, Length x, Length y);

  const Paper& paper_;
  const int chapter_;
  PageStack& stack_;
  int page_ = -1;
  Length y_ = 0;       ///< how far down the page it is
  std::string begun_;  ///< the entry that was begun last
};

/// Places a whole chapter.
void fill_pages(Galley galley, const Paper& paper, int chapter, PageStack& stack);

/// Places narrow strips in columns: `first` stands over the full width above them.
void fill_columns(const Strips& first, const Strips& strips, int columns, const Paper& paper, int chapter, PageStack& stack);

}  // namespace benchleaf::page
