#pragma once

#include <string>
#include <vector>

#include "model/book.h"
#include "page/set_book.h"

namespace benchleaf::test {

/// A book of one chapter with these blocks, and an index of nothing.
model::Book book_with(model::Blocks blocks);

model::Block paragraph(const std::string& words);
model::Block heading(int level, const std::string& words, const std::string& anchor = {});
/// `words words words ...`, about this many words, the same for the same seed.
std::string prose(unsigned seed, int words);

struct Laid {
  page::Document document;
  report::Findings findings;
};
Laid lay(const model::Book& book, const char* paper = "a4");

/// Words that stand on one baseline and belong to one block element.
struct Line {
  int page = 0;
  page::Length y = 0;
  page::Length left = 0;
  page::Length right = 0;  ///< end of the ink
  page::TagId block = -1;  ///< paragraph, heading, cell; negative for artifacts
  page::Role role = page::Role::div;
  std::string text;
};
/// Every line of every page, by page, then from top to bottom, then from left to right.
std::vector<Line> lines_of(const page::Document& document);

/// Left and right edge of the text block on a page of the body, by its label.
struct Edges {
  page::Length left = 0;
  page::Length right = 0;
};
Edges block_edges(const page::Document& document, int page, const char* paper = "a4");

}  // namespace benchleaf::test
