// Page numbers in slots and in the contents: each is the label of the page its target stands on, and filling it in moves
// no line. Expected values are the destinations of the same document and the measures of the page; no outside source.
#include <algorithm>
#include <cstdlib>
#include <map>

#include "page/layout/laid_book.h"
#include "page/packed.h"
#include "support/catch.h"

using namespace benchleaf;
using benchleaf::test::lines_of;

namespace {

constexpr int kPlaces = 60;

std::string place(int i) { return "place/" + std::to_string(i); }

/// Sixty headed places; each names three others with their pages, early ones as well as late ones.
model::Blocks places_that_refer() {
  model::Blocks blocks;
  for (int i = 0; i < kPlaces; ++i) {
    blocks.push_back(test::heading(2, "Place " + std::to_string(i), place(i)));
    model::Paragraph words;
    for (int k = 1; k <= 3; ++k) {
      const std::string target = place((i * 7 + k * 11) % kPlaces);
      words.runs.push_back(model::text_run(test::prose(static_cast<unsigned>(i * 3 + k), 30) + " see "));
      words.runs.push_back(model::link_run("there", target));
      words.runs.push_back(model::page_run(target));
      words.runs.push_back(model::text_run(", then "));
    }
    words.runs.push_back(model::text_run(test::prose(static_cast<unsigned>(i), 40)));
    blocks.push_back({words});
  }
  return blocks;
}

/// What a link's element prints, by element.
std::map<page::TagId, std::string> link_words(const page::Document& document) {
  std::map<page::TagId, std::string> words;
  for (const page::Page& page : document.pages) {
    for (const page::Item& item : page::items_of(page)) {
      const auto* text = std::get_if<page::TextItem>(&item.what);
      const bool in_link = item.tag >= 0 && document.tags[static_cast<std::size_t>(item.tag)].role == page::Role::link;
      if (text != nullptr && in_link) words[item.tag] += text->text;
    }
  }
  return words;
}

std::string label_of(const page::Document& document, const std::string& target) {
  return document.pages[static_cast<std::size_t>(document.destinations.at(target).page)].label;
}

}  // namespace

TEST_CASE("a page reference prints the label of the page where its target stands, and none on that page itself") {
  const test::Laid laid = test::lay(test::book_with(places_that_refer()));
  CHECK_FALSE(laid.findings.has_errors());
  const auto words = link_words(laid.document);
  int numbered = 0, own = 0;
  for (std::size_t at = 0; at < laid.document.pages.size(); ++at) {
    for (const page::LinkArea& link : laid.document.pages[at].links) {
      const std::string text = words.at(link.tag);
      const std::size_t number = text.find("p.\u00A0");
      const bool here = laid.document.destinations.at(link.target).page == static_cast<int>(at);
      if (number != std::string::npos) CHECK(text.substr(number + 4) == label_of(laid.document, link.target));
      if (text.rfind("there", 0) == 0) CHECK((number == std::string::npos) == here);
      ++(number == std::string::npos ? own : numbered);
    }
  }
  CHECK(numbered > 2 * kPlaces);
  CHECK(own > 0);
}

TEST_CASE("a name and its page number are one link") {
  const test::Laid laid = test::lay(test::book_with(places_that_refer()));
  int links = 0;
  for (const auto& [tag, text] : link_words(laid.document)) {
    CHECK((text.find("p.\u00A0") == std::string::npos || text.rfind("there", 0) == 0));
    links += text.rfind("there", 0) == 0;
  }
  CHECK(links == 3 * kPlaces);
}

TEST_CASE("a narrow number leaves no hole in a ragged line") {
  model::Blocks blocks = {test::heading(2, "Here", "place/here")};
  model::Paragraph dense;
  dense.role = model::Paragraph::Role::note;
  dense.runs = {model::link_run("there", "place/here"), model::page_run("place/here"), model::text_run(", then.")};
  blocks.push_back({dense});
  const test::Laid laid = test::lay(test::book_with(std::move(blocks)));
  page::Length end = 0;
  for (const test::Line& line : lines_of(laid.document)) {
    if (line.text.find("there") != std::string::npos && line.text.find(", then.") != std::string::npos)
      end = line.right - line.left;
  }
  REQUIRE(end > 0);
  // the same words with the number written out, set as one run
  model::Paragraph plain = dense;
  plain.runs = {model::text_run("there p.\u00A0888, then.")};
  const test::Laid wide = test::lay(test::book_with({{plain}}));
  for (const test::Line& line : lines_of(wide.document)) {
    // two figures less, and the number is set a little smaller
    if (line.text.find("888") != std::string::npos) CHECK(end < line.right - line.left);
  }
}

TEST_CASE("the contents give each section the page it stands on") {
  const test::Laid laid = test::lay(test::book_with(places_that_refer()));
  int seen = 0;
  std::map<std::string, std::string> expected;
  for (const page::Bookmark& mark : laid.document.bookmarks) expected[mark.title] = label_of(laid.document, mark.target);
  for (const page::Page& page : laid.document.pages) {
    if (page.label.find_first_of("ivx") == std::string::npos) continue;
    for (const page::LinkArea& link : page.links) {
      if (link.words.rfind("Place ", 0) != 0) continue;
      CHECK(expected.at(link.words) == label_of(laid.document, link.target));
      ++seen;
    }
  }
  CHECK(seen >= kPlaces);
}

TEST_CASE("a few lines do not begin a page of the contents, and none stand too close") {
  constexpr int kFewest = 6;
  std::size_t most_pages = 0;
  for (int places = 80; places <= 130; places += 2) {
    model::Blocks blocks;
    for (int i = 0; i < places; ++i) {
      blocks.push_back(test::heading(2, "Place " + std::to_string(i), place(i)));
      blocks.push_back(test::paragraph("Words."));
    }
    const test::Laid laid = test::lay(test::book_with(std::move(blocks)), "letter");
    INFO(places);
    std::vector<int> on_page;
    int all = 0;
    for (const page::Page& page : laid.document.pages) {
      if (page.label.find_first_of("ivx") == std::string::npos) continue;
      const page::LinkArea* above = nullptr;
      int here = 0;
      for (const page::LinkArea& link : page.links) {
        if (link.words.rfind("Place ", 0) != 0) continue;
        ++here;
        if (above != nullptr && above->box.left == link.box.left) {
          CHECK(link.box.top - above->box.top >= page::from_mm(4.0));
          CHECK(link.box.top >= above->box.bottom);
        }
        above = &link;
      }
      if (here > 0) on_page.push_back(here);
      all += here;
    }
    CHECK(all == places);
    REQUIRE(!on_page.empty());
    CHECK(on_page.back() >= kFewest);
    most_pages = std::max(most_pages, on_page.size());
  }
  CHECK(most_pages == 2);
}
