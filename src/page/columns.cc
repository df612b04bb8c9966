// In: strips as wide as one of several columns. Out: which of them stands where.
#include "page/columns.h"

#include <algorithm>

namespace benchleaf::page {
namespace {

/// By which the height of even columns is looked for.
constexpr double kStepMm = 1;

/// Behind the last strip that goes where `first` goes.
std::size_t kept_end(const Strips& strips, std::size_t first, std::size_t end) {
  while (first + 1 < end && strips[first].keep_next) ++first;
  return first + 1;
}

Length chain_height(const Galley& galley, std::size_t first, std::size_t end, bool opens) {
  Length height = 0;
  for (std::size_t i = first; i < end; ++i) {
    const Strip& strip = galley.strips[i];
    if (i == first && opens) {
      if (strip.head >= 0) height += galley.heads[static_cast<std::size_t>(strip.head)].height;
    } else {
      height += strip.before;
    }
    height += strip.height;
  }
  return height;
}

/// One column after the other, each `room` high.
ColumnBreaks filled(const Galley& galley, std::size_t first, std::size_t end, Length room) {
  const Strips& strips = galley.strips;
  ColumnBreaks breaks;
  std::size_t at = first;
  for (int column = 0; column < strips[first].columns && at < end; ++column) {
    Length y = 0;
    while (at < end) {
      std::size_t behind = kept_end(strips, at, end);
      if (y + chain_height(galley, at, behind, y == 0) > room) {
        if (!breaks.places.empty()) break;
        behind = at + 1;  // higher than any column: the keep gives way
      }
      for (; at < behind; ++at) {
        ColumnPlace place{at, column, y, -1, 0};
        if (y == 0 && strips[at].head >= 0) {
          place.head = strips[at].head;
          place.head_y = 0;
          y += galley.heads[static_cast<std::size_t>(place.head)].height;
        } else if (y > 0) {
          y += strips[at].before;
        }
        place.y = y;
        y += strips[at].height;
        breaks.places.push_back(place);
      }
      breaks.height = std::max(breaks.height, y);
    }
  }
  breaks.end = at;
  return breaks;
}

Length tallest_chain(const Galley& galley, std::size_t first, std::size_t end) {
  Length tallest = 0;
  while (first < end) {
    const std::size_t behind = kept_end(galley.strips, first, end);
    tallest = std::max(tallest, chain_height(galley, first, behind, true));
    first = behind;
  }
  return tallest;
}

}  // namespace

Length first_chain_height(const Galley& galley, std::size_t first, std::size_t end) {
  return chain_height(galley, first, kept_end(galley.strips, first, end), true);
}

ColumnBreaks column_breaks(const Galley& galley, std::size_t first, std::size_t end, Length room) {
  ColumnBreaks full = filled(galley, first, end, room);
  if (full.end < end) return full;
  const Length step = from_mm(kStepMm);
  // Lower than the tallest chain, a column would part what is kept together.
  Length low = std::max<Length>(0, tallest_chain(galley, first, end) - 1) / step;
  Length high = std::max<Length>(low + 1, (room + step - 1) / step);
  while (low + 1 < high) {
    const Length middle = (low + high) / 2;
    (filled(galley, first, end, middle * step).end == end ? high : low) = middle;
  }
  return filled(galley, first, end, std::min(room, high * step));
}

Strip in_columns(const Galley& galley, std::size_t first, std::size_t end, Length block_width, Length room) {
  const ColumnBreaks breaks = column_breaks(galley, first, end, room);
  const Strips& strips = galley.strips;
  const Length pitch = column_width(block_width, strips[first].columns) + from_mm(5);
  Strip whole;
  whole.before = strips[first].before;
  whole.keep_next = strips[end - 1].keep_next;
  whole.height = breaks.height;
  for (const ColumnPlace& place : breaks.places) {
    if (place.head >= 0) overlay(whole, galley.heads[static_cast<std::size_t>(place.head)], place.column * pitch, place.head_y);
    overlay(whole, strips[place.strip], place.column * pitch, place.y);
  }
  return whole;
}

}  // namespace benchleaf::page
