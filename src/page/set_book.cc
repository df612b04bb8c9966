// In: the book, a paper, fonts. Out: the display list of all pages with their structure.
//
// The chapters are placed first, then the index and the front matter, which only print the numbers; nothing that is
// placed moves again. One filling pass puts in numbers, running matter and the boxes of figures.
#include "page/set_book.h"

#include <algorithm>
#include <utility>

#include "page/anchors.h"
#include "page/blocks.h"
#include "page/finish.h"
#include "page/front.h"
#include "page/furniture.h"
#include "page/slots.h"

namespace benchleaf::page {
namespace {

const model::IndexList* index_of(const model::Chapter& chapter) {
  for (const model::Block& block : chapter.blocks) {
    if (const auto* index = std::get_if<model::IndexList>(&block.what)) return index;
  }
  return nullptr;
}

PageNumbers numbers_of(const PageStack& stack) {
  PageNumbers numbers;
  for (const auto& [anchor, place] : stack.destinations) numbers[anchor] = std::to_string(place.page + 1);
  return numbers;
}

void set_chapter(Setting& setting, const model::Book& book, std::size_t at, TagId document, PageStack& body) {
  const model::Chapter& chapter = book.chapters[at];
  const TagId section = setting.add_tag(Role::part, document);
  setting.outline.push_back({1, chapter.title, chapter_anchor(chapter), chapter.number});
  Galley galley;
  galley.strips = chapter_head(setting, chapter, section);
  const model::IndexList* index = index_of(chapter);
  PageFiller filler(setting.paper, static_cast<int>(at), body);
  Target target{galley, setting.paper.block_width, section, 1, 2, false, look::body()};
  // The title stands in the head; a chapter's own first heading would say it twice, but is a place to link to.
  bool titled = false;
  for (const model::Block& block : chapter.blocks) {
    const auto* heading = std::get_if<model::Heading>(&block.what);
    if (heading != nullptr && heading->level == 1 && !titled && !galley.begun) {
      titled = true;
      if (!heading->anchor.empty()) galley.strips.front().places.push_back({heading->anchor, 0});
      continue;
    }
    set_block(setting, block, target);
    if (index == nullptr) filler.take(galley);  // what is placed need not wait for the rest
  }
  if (index == nullptr) {
    filler.finish(galley);
  } else {
    set_index(setting, *index, galley.strips, numbers_of(body), static_cast<int>(at), section, body);
  }
}

std::string widest_number(const std::set<std::string>& anchors) { return anchors.size() < 3000 ? "888" : "88888"; }

std::vector<Bookmark> bookmarks_of(const Setting& setting) {
  std::vector<Bookmark> bookmarks{{1, "Contents", "contents"}};
  for (const OutlineLine& line : setting.outline) {
    const std::string title = line.level == 1 ? std::to_string(line.number) + " " + line.title : line.title;
    bookmarks.push_back({line.level, title, line.anchor});
  }
  return bookmarks;
}

}  // namespace

Document set_book(const model::Book& book, const Paper& paper, const FontSet& fonts, const Hyphenator* hyphenator,
                  report::Findings& findings) {
  TextSetter text(fonts, hyphenator);
  Document document;
  document.title = book.title;
  document.subject = book.subtitle;
  document.language = book.language;
  document.iso_date = book.iso_date;
  Setting setting{text, findings, paper, document.tags, anchors_of(book), {}, {}};
  setting.widest_number = widest_number(setting.anchors);
  const TagId root = setting.add_tag(Role::document, kLayoutArtifact);

  PageStack body;
  for (std::size_t i = 0; i < book.chapters.size(); ++i) set_chapter(setting, book, i, root, body);
  const PageNumbers numbers = numbers_of(body);
  PageStack front = set_front(setting, book, numbers, root);
  document.bookmarks = bookmarks_of(setting);

  fill_slots(setting, numbers, body);
  fill_slots(setting, numbers, front);
  furnish_all(setting, book, front, Numbering::roman);
  furnish_all(setting, book, body, Numbering::decimal);
  join(document, std::move(front), std::move(body));
  box_figures(document);
  prune_tags(document);
  return document;
}

std::string page_label(const Document& document, const std::string& anchor) {
  const auto place = document.destinations.find(anchor);
  return place == document.destinations.end() ? std::string()
                                              : document.pages.at(static_cast<std::size_t>(place->second.page)).label;
}

}  // namespace benchleaf::page
