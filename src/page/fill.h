#pragma once

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
  bool signs = false;
  bool true_size = false;
};

/// Pages under construction: the placing pass puts strips on them, the filling pass numbers, heads and tabs.
struct PageStack {
  std::vector<Page> pages;
  std::vector<PageNotes> notes;
  std::map<std::string, Destination> destinations;
  std::vector<PendingSlot> slots;

  Side side(int page) const { return page % 2 == 0 ? Side::recto : Side::verso; }
};

/// Height kept free at the foot of the block on a page that carries trust signs.
Length legend_height();

/// Places a chapter's strips on new pages after the last one. Keeps hold; one that is taller than a page gives way.
void fill_pages(const Galley& galley, const Paper& paper, int chapter, PageStack& stack);

/// Places narrow strips in columns: `first` stands over the full width above them.
void fill_columns(const Strips& first, const Strips& strips, int columns, const Paper& paper, int chapter, PageStack& stack);

}  // namespace benchleaf::page
