#pragma once

#include <functional>
#include <vector>

#include "page/display.h"

namespace benchleaf::page {

/// Puts the items of a page away, in order behind those that were packed before: a fifth of the memory, nothing lost. A book
/// of thousands of pages holds them all until its page numbers are known.
void pack(Page& page);

/// Brings all items of a page back, to be changed.
void unpack(Page& page);

/// Lets all items go, and their memory.
void drop_items(Page& page);

/// Calls `see` with each item of a page in drawing order, packed or not. The item is valid during the call.
void for_each_item(const Page& page, const std::function<void(const Item&)>& see);

/// Calls `see` with the elements of the items in drawing order, once for items of one element that stand together.
void for_each_tag(const Page& page, const std::function<void(TagId)>& see);

/// Gives each item of an element the one that stands in its place in `moved`.
void move_tags(Page& page, const std::vector<TagId>& moved);

/// All items of a page.
std::vector<Item> items_of(const Page& page);

/// Whether nothing stands on a page.
bool is_empty(const Page& page);

}  // namespace benchleaf::page
