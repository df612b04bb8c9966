// In: strips. Out: strips moved, laid over each other, or joined into one that cannot be broken.
#include "page/strip.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace benchleaf::page {
namespace {

void move_point(Point& point, Length dx, Length dy) {
  point.x += dx;
  point.y += dy;
}

template <class T>
void append(std::vector<T>& to, std::vector<T>& from) {
  to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

}  // namespace

void shift(Item& item, Length dx, Length dy) {
  if (auto* text = std::get_if<TextItem>(&item.what)) {
    move_point(text->at, dx, dy);
    return;
  }
  if (auto* sign = std::get_if<SignItem>(&item.what)) {
    move_point(sign->at, dx, dy);
    return;
  }
  for (PathSegment& segment : std::get<PathItem>(item.what).segments) {
    move_point(segment.to, dx, dy);
    move_point(segment.control1, dx, dy);
    move_point(segment.control2, dx, dy);
  }
}

void shift(Strip& strip, Length dx, Length dy) {
  for (Item& item : strip.items) shift(item, dx, dy);
  for (LinkArea& link : strip.links) {
    link.box.left += dx;
    link.box.right += dx;
    link.box.top += dy;
    link.box.bottom += dy;
  }
  for (Slot& slot : strip.slots) move_point(slot.at, dx, dy);
  for (Place& place : strip.places) place.y += dy;
}

void overlay(Strip& whole, Strip part, Length dx, Length dy) {
  shift(part, dx, dy);
  append(whole.items, part.items);
  append(whole.links, part.links);
  append(whole.slots, part.slots);
  append(whole.places, part.places);
  whole.true_size = whole.true_size || part.true_size;
  if (!part.running.empty()) {
    if (whole.running.empty()) whole.running = part.running;
    whole.running_end = part.running_end.empty() ? part.running : part.running_end;
  }
}

Length total_height(const Strips& strips) {
  Length height = 0;
  for (std::size_t i = 0; i < strips.size(); ++i) height += strips[i].height + (i == 0 ? 0 : strips[i].before);
  return height;
}

Length column_width(Length block, int columns) { return (block - (columns - 1) * from_mm(5)) / columns; }

Strip stacked(Strips strips) {
  Strip whole;
  if (strips.empty()) return whole;
  whole.before = strips.front().before;
  whole.new_page = strips.front().new_page;
  whole.keep_next = strips.back().keep_next;
  whole.columns = strips.front().columns;
  Length y = 0;
  for (std::size_t i = 0; i < strips.size(); ++i) {
    if (i != 0) y += strips[i].before;
    const Length height = strips[i].height;
    overlay(whole, std::move(strips[i]), 0, y);
    y += height;
  }
  whole.height = y;
  return whole;
}

}  // namespace benchleaf::page
