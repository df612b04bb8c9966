// In: finished pages. Out: the same pages on larger paper, with bleed and crop marks.
#include "page/crop_marks.h"

#include "page/drawing.h"
#include "page/packed.h"
#include "page/strip.h"

namespace benchleaf::page {
namespace {

constexpr double kMarkMm = 5;
constexpr double kMarkPt = 0.25;
/// How near the trim a fill has to end to be meant to reach it.
constexpr double kTouchMm = 0.05;

void run_on(Length& at, Length trim, Length way, Length bleed) {
  const Length gap = at > trim ? at - trim : trim - at;
  if (gap <= from_mm(kTouchMm)) at = trim + way * bleed;
}

/// A fill that ends at the trim would show a white line where the knife is a hair off.
void bleed_off(PathItem& path, const Page& page) {
  if (!path.fill) return;
  const Length bleed = from_mm(kBleedMm);
  for (PathSegment& segment : path.segments) {
    for (Point* point : {&segment.to, &segment.control1, &segment.control2}) {
      run_on(point->x, 0, -1, bleed);
      run_on(point->x, page.width, 1, bleed);
      run_on(point->y, 0, -1, bleed);
      run_on(point->y, page.height, 1, bleed);
    }
  }
}

Item mark(Point from, Point to) {
  PathItem path;
  path.segments = {{PathSegment::Op::move, from, {}, {}}, {PathSegment::Op::line, to, {}, {}}};
  path.stroke = print_color(model::Ink::ink);
  path.stroke_width = static_cast<Length>(kMarkPt * kPt);
  return {kPaginationArtifact, std::move(path)};
}

void add_marks(Page& page) {
  const Length mark_length = from_mm(kMarkMm);
  for (const Length x : {page.trim, page.width - page.trim}) {
    page.items.push_back(mark({x, 0}, {x, mark_length}));
    page.items.push_back(mark({x, page.height - mark_length}, {x, page.height}));
  }
  for (const Length y : {page.trim, page.height - page.trim}) {
    page.items.push_back(mark({0, y}, {mark_length, y}));
    page.items.push_back(mark({page.width - mark_length, y}, {page.width, y}));
  }
}

void move(Box& box, Length by) { box = {box.left + by, box.top + by, box.right + by, box.bottom + by}; }

}  // namespace

void add_crop_marks(Document& document) {
  const Length margin = from_mm(kMarkedMarginMm);
  for (Page& page : document.pages) {
    unpack(page);
    for (Item& item : page.items) {
      if (auto* path = std::get_if<PathItem>(&item.what)) bleed_off(*path, page);
      shift(item, margin, margin);
    }
    for (LinkArea& link : page.links) move(link.box, margin);
    page.width += 2 * margin;
    page.height += 2 * margin;
    page.trim = margin;
    page.bleed = margin - from_mm(kBleedMm);
    add_marks(page);
    pack(page);
  }
  for (Tag& tag : document.tags) {
    if (tag.more().box) move(*tag.set().box, margin);
  }
  for (auto& [name, place] : document.destinations) {
    place.x += margin;
    place.y += margin;
  }
}

}  // namespace benchleaf::page
