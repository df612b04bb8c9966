// In: pages with everything placed. Out: numbers in their slots, running matter, boxes of figures, a structure without
// empty elements.
#include "page/finish.h"

#include <algorithm>
#include <utility>

#include "page/furniture.h"
#include "page/packed.h"
#include "page/roman.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

void widen(std::optional<Box>& box, Point point) {
  if (!box) {
    box = Box{point.x, point.y, point.x, point.y};
    return;
  }
  box->left = std::min(box->left, point.x);
  box->right = std::max(box->right, point.x);
  box->top = std::min(box->top, point.y);
  box->bottom = std::max(box->bottom, point.y);
}

void widen(std::optional<Box>& box, const Item& item) {
  if (const auto* path = std::get_if<PathItem>(&item.what)) {
    for (const PathSegment& segment : path->segments) {
      if (segment.op != PathSegment::Op::close) widen(box, segment.to);
    }
    return;
  }
  if (const auto* sign = std::get_if<SignItem>(&item.what)) {
    widen(box, {sign->at.x, sign->at.y - sign->size});
    widen(box, {sign->at.x + sign->size, sign->at.y});
    return;
  }
  const auto& text = std::get<TextItem>(item.what);
  widen(box, {text.at.x, text.at.y - text.size});
  widen(box, text.at);
}

/// The figure that an element belongs to, or an artifact id.
TagId figure_above(const std::vector<Tag>& tags, TagId tag) {
  while (tag >= 0 && tags[static_cast<std::size_t>(tag)].role != Role::figure) tag = tags[static_cast<std::size_t>(tag)].parent;
  return tag;
}

bool may_be_empty(Role role) {
  return role == Role::document || role == Role::data_cell || role == Role::header_cell || role == Role::row;
}

}  // namespace

void furnish_all(Setting& setting, const model::Book& book, PageStack& stack, Numbering numbering) {
  for (std::size_t i = 0; i < stack.pages.size(); ++i) {
    const int number = static_cast<int>(i) + 1;
    Page& page = stack.pages[i];
    page.label = numbering == Numbering::roman ? roman(number) : std::to_string(number);
    const bool cover = numbering == Numbering::roman && i == 0;
    const bool blank = is_empty(page);
    if (!cover && !blank) furnish(setting, book, stack.notes[i], stack.side(static_cast<int>(i)), page.label, page);
    pack(page);
  }
}

void join(Document& document, PageStack front, PageStack body) {
  const int offset = static_cast<int>(front.pages.size());
  document.pages = std::move(front.pages);
  for (Page& page : body.pages) document.pages.push_back(std::move(page));
  document.destinations = std::move(front.destinations);
  for (auto& [anchor, place] : body.destinations) {
    place.page += offset;
    document.destinations[anchor] = place;
  }
}

void box_figures(Document& document) {
  for (std::size_t number = 0; number < document.pages.size(); ++number) {
    bool figures = false;
    for_each_tag(document.pages[number], [&](TagId tag) { figures = figures || figure_above(document.tags, tag) >= 0; });
    if (!figures) continue;
    for_each_item(document.pages[number], [&](const Item& item) {
      const TagId figure = figure_above(document.tags, item.tag);
      if (figure < 0) return;
      TagMore& tag = document.tags[static_cast<std::size_t>(figure)].set();
      widen(tag.box, item);
      tag.box_page = static_cast<int>(number);
    });
  }
}

void prune_tags(Document& document) {
  std::vector<Tag>& tags = document.tags;
  std::vector<bool> kept(tags.size(), false);
  const auto keep_up = [&](TagId tag) {
    for (; tag >= 0 && !kept[static_cast<std::size_t>(tag)]; tag = tags[static_cast<std::size_t>(tag)].parent) {
      kept[static_cast<std::size_t>(tag)] = true;
    }
  };
  for (const Page& page : document.pages) {
    for_each_tag(page, keep_up);
  }
  for (std::size_t i = 0; i < tags.size(); ++i) {
    // A cell without words stays when its row stays, so that columns keep their count.
    if (may_be_empty(tags[i].role) && (tags[i].parent < 0 || kept[static_cast<std::size_t>(tags[i].parent)])) kept[i] = true;
  }
  std::vector<TagId> moved(tags.size(), kLayoutArtifact);
  std::vector<Tag> left;
  left.reserve(static_cast<std::size_t>(std::count(kept.begin(), kept.end(), true)));
  for (std::size_t i = 0; i < tags.size(); ++i) {
    if (!kept[i]) continue;
    moved[i] = static_cast<TagId>(left.size());
    if (tags[i].parent >= 0) tags[i].parent = moved[static_cast<std::size_t>(tags[i].parent)];
    left.push_back(std::move(tags[i]));
  }
  tags = std::move(left);
  for (Page& page : document.pages) {
    move_tags(page, moved);
    for (LinkArea& link : page.links) {
      if (link.tag >= 0) link.tag = moved[static_cast<std::size_t>(link.tag)];
    }
  }
}

}  // namespace benchleaf::page
