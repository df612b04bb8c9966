#pragma once

#include <map>
#include <string>

#include "model/book.h"
#include "page/fill.h"
#include "page/setting.h"

namespace benchleaf::page {

/// Printed page numbers by anchor, known once the chapters are placed.
using PageNumbers = std::map<std::string, std::string>;

/// The last page of part A, and of the book where a part B follows; 0 where there is none.
struct PartPages {
  std::size_t last_of_a = 0;
  std::size_t last_of_b = 0;
};

/// Cover, the page on who answers for what, and the contents with their numbers, on an even count of pages.
PageStack set_front(Setting& setting, const model::Book& book, const PageNumbers& numbers, const PartPages& parts,
                    TagId document);

/// The index in three columns under its chapter's head.
void set_index(Setting& setting, const model::IndexList& index, const Strips& head, const PageNumbers& numbers, int chapter,
               TagId parent, PageStack& stack);

/// The head of a chapter: number, title, rule.
Strips chapter_head(Setting& setting, const model::Chapter& chapter, TagId section);

}  // namespace benchleaf::page
