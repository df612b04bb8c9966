// The check of places finds what is planted for it; the book with the planted fault is a trial, the real one is looked at in
// tests/command/handbook_boxes_test.cc.
#include "support/text_boxes.h"

#include "page/layout/laid_book.h"
#include "page/packed.h"
#include "page/text/text_support.h"
#include "support/catch.h"

using namespace benchleaf;

namespace {

page::Document trial() {
  model::Blocks blocks;
  for (unsigned i = 0; i < 12; ++i) blocks.push_back(test::paragraph(test::prose(i, 60)));
  return test::lay(test::book_with(std::move(blocks))).document;
}

std::vector<std::string> faults_of(const page::Document& document) {
  return test::box_faults(document, test::book_fonts(), page::paper_named("a4").value());
}

/// The text items of the first page of the body, to be moved.
std::vector<page::TextItem*> words_of(page::Page& page) {
  page::unpack(page);
  std::vector<page::TextItem*> words;
  for (page::Item& item : page.items) {
    auto* text = std::get_if<page::TextItem>(&item.what);
    if (text != nullptr && item.tag >= 0) words.push_back(text);
  }
  return words;
}

page::Page& first_of_body(page::Document& document) {
  for (page::Page& page : document.pages) {
    if (page.label == "1") return page;
  }
  throw std::runtime_error("no page 1");
}

}  // namespace

TEST_CASE("words in their places have no faults") { CHECK(faults_of(trial()).empty()); }

TEST_CASE("a line moved on to another is found, and a word in the margin") {
  page::Document document = trial();
  const std::vector<page::TextItem*> words = words_of(first_of_body(document));
  REQUIRE(words.size() > 8);
  words[4]->at = {words[5]->at.x + page::kPt, words[5]->at.y + page::kPt};
  const std::vector<std::string> overlaps = faults_of(document);
  REQUIRE_FALSE(overlaps.empty());
  CHECK(overlaps.front().find("overlap") != std::string::npos);
  for (const page::Point& at :
       {page::Point{page::from_mm(5), page::from_mm(100)}, page::Point{page::from_mm(100), page::from_mm(296)},
        page::Point{page::from_mm(196), page::from_mm(100)}}) {
    words[4]->at = at;
    std::string told;
    for (const std::string& fault : faults_of(document)) told += fault + "\n";
    INFO(told);
    CHECK(told.find(words[4]->text + "' stands in the margin") != std::string::npos);
  }
}
