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

PageNumbers numbers_of(const PageStack& stack, std::size_t before) {
  PageNumbers numbers;
  for (const auto& [anchor, place] : stack.destinations)
    numbers[anchor] = std::to_string(static_cast<std::size_t>(place.page) + before + 1);
  return numbers;
}

void set_chapter(Setting& setting, const model::Book& book, std::size_t at, TagId document, PageStack& body) {
  const model::Chapter& chapter = book.chapters[at];
  const TagId section = setting.add_tag(Role::part, document);
  setting.outline.push_back({1, chapter.title, chapter_anchor(chapter), chapter.number, chapter.part});
  Galley galley;
  galley.strips = chapter_head(setting, chapter, section);
  PageFiller filler(setting.paper, static_cast<int>(at), body);
  Target target{galley, setting.paper.block_width, section, 1, 2, false, look::entry_body()};
  std::vector<const model::Block*> blocks;
  // The title stands in the head; a chapter's own first heading would say it twice, but is a place to link to.
  bool titled = false;
  for (const model::Block& block : chapter.blocks) {
    const auto* heading = std::get_if<model::Heading>(&block.what);
    if (heading != nullptr && heading->level == 1 && !titled && blocks.empty()) {
      titled = true;
      if (!heading->anchor.empty()) galley.strips.front().places.push_back({heading->anchor, 0});
      continue;
    }
    blocks.push_back(&block);
  }
  for (std::size_t i = 0; i < blocks.size(); ++i) {
    set_in_columns(setting, blocks, i, target);
    filler.take(galley);  // what is placed need not wait for the rest
  }
  filler.finish(galley);
}

/// The index on pages of its own, an even number of them if more follow.
PageStack index_pages(Setting& setting, const model::Book& book, std::size_t at, const PageNumbers& numbers, TagId document) {
  const model::Chapter& chapter = book.chapters[at];
  PageStack pages;
  const TagId section = setting.add_tag(Role::part, document);
  const Strips head = chapter_head(setting, chapter, section);
  set_index(setting, *index_of(chapter), head, numbers, static_cast<int>(at), section, pages);
  return pages;
}

void pad_to_even(const Paper& paper, int chapter, PageStack& stack) {
  if (stack.pages.size() % 2 == 0) return;
  Page page;
  page.width = paper.width;
  page.height = paper.height;
  stack.pages.push_back(std::move(page));
  stack.notes.push_back({chapter, {}, {}, false, false});
}

/// Chapters before the index, the index, those behind it. How many pages the index takes decides the numbers that it prints.
PageStack set_body(Setting& setting, const model::Book& book, TagId root) {
  PageStack body, behind;
  std::size_t index = book.chapters.size();
  for (std::size_t i = 0; i < book.chapters.size(); ++i) {
    if (index_of(book.chapters[i]) != nullptr) {
      index = i;
      const model::Chapter& chapter = book.chapters[i];
      setting.outline.push_back({1, chapter.title, chapter_anchor(chapter), chapter.number, chapter.part});
      continue;
    }
    set_chapter(setting, book, i, root, index < i ? behind : body);
  }
  if (index == book.chapters.size()) return body;
  pad_to_even(setting.paper, static_cast<int>(index) - 1, body);
  constexpr int kTries = 5;
  std::size_t pages = 2;
  for (int i = 0; i < kTries; ++i) {
    const std::size_t tags = setting.tags.size();
    PageNumbers numbers = numbers_of(body, 0);
    numbers.merge(numbers_of(behind, body.pages.size() + pages));
    PageStack made = index_pages(setting, book, index, numbers, root);
    if (!behind.pages.empty()) pad_to_even(setting.paper, static_cast<int>(index), made);
    if (made.pages.size() == pages || i + 1 == kTries) {
      append(body, std::move(made));
      append(body, std::move(behind));
      break;
    }
    pages = made.pages.size();
    setting.tags.resize(tags);
  }
  return body;
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

PartPages parts_of(const model::Book& book, const PageStack& body) {
  PartPages parts;
  for (std::size_t i = 0; i < body.notes.size(); ++i) {
    const int chapter = body.notes[i].chapter;
    if (chapter >= 0 && book.chapters[static_cast<std::size_t>(chapter)].part == model::BookPart::a)
      parts.last_of_a = i + 1;
    else
      parts.last_of_b = i + 1;
  }
  return parts;
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

  PageStack body = set_body(setting, book, root);
  const PageNumbers numbers = numbers_of(body, 0);
  PageStack front = set_front(setting, book, numbers, parts_of(book, body), root);
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
