#pragma once

#include <string>
#include <vector>

#include "page/display.h"
#include "page/paper.h"

namespace benchleaf::page {

/// A place that waits for a page number. As wide as the widest number the book could have, so that filling it in never
/// moves a line.
struct Slot {
  Point at;  ///< left end on the baseline
  Length width = 0;
  Length before = 0;  ///< from the left end of its line to the slot
  Length after = 0;   ///< from the slot to the right end of its line
  bool flush_right = false;
  bool justified = false;  ///< its line is as wide as the measure and stays so
  double size_pt = 8.5;    ///< of its type: width and number are set alike
  std::string target;
  TagId tag = kLayoutArtifact;
};

/// A destination inside a strip.
struct Place {
  std::string anchor;
  Length y = 0;
};

/// The smallest thing that moves as a whole: a line, a table row, a message, an entry that must stay together. All
/// coordinates are from the strip's top left corner, which lies on the left edge of the text block.
struct Strip {
  Length height = 0;
  Length baseline = 0;     ///< of a line of text, from the top; 0 where there is none
  Length before = 0;       ///< least space above; falls away at the top of a page
  bool keep_next = false;  ///< never last on its page
  bool new_page = false;
  bool heading = false;     ///< ends a heading
  bool message = false;     ///< warns of what follows
  bool true_size = false;   ///< shows something at true size, so the page needs the check bar
  int columns = 1;          ///< set as wide as one of so many columns, which it fills with its like before and after it
  int spread = 0;           ///< not 0: on one page or on two facing ones with all strips of the same number
  int head = -1;            ///< table head to repeat when this strip is first on a page
  std::string running;      ///< the first entry that stands on this strip, for the running head
  std::string running_end;  ///< the last one
  std::vector<Item> items;
  std::vector<LinkArea> links;
  std::vector<Slot> slots;
  std::vector<Place> places;
};
using Strips = std::vector<Strip>;

/// What the blocks of one chapter become: strips in order, and the table heads that may be repeated.
struct Galley {
  Strips strips;
  std::vector<Strip> heads;
  bool begun = false;  ///< strips were taken out already

  bool empty() const { return strips.empty() && !begun; }
};

void shift(Item& item, Length dx, Length dy);
void shift(Strip& strip, Length dx, Length dy);

/// Lays `part` over `whole` at an offset; the height of `whole` stays as it is.
void overlay(Strip& whole, Strip part, Length dx, Length dy);

/// Total height of strips set one under the other, the first one's `before` left out.
Length total_height(const Strips& strips);

/// The width of one of `columns` columns of a block so wide.
Length column_width(Length block, int columns);

/// One strip that holds all of them in order, unbreakable.
Strip stacked(Strips strips);

}  // namespace benchleaf::page
