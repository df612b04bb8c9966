// Running matter and the edges of the page: heads name the entries on the page, nothing told to a reader stands outside
// the text block. The measures are page::Paper's; no outside source.
#include <map>
#include <utility>

#include "page/layout/laid_book.h"
#include "page/roman.h"
#include "support/catch.h"

using namespace benchleaf;

namespace {

model::Block entry(int i) {
  model::Entry entry;
  entry.rank = model::Entry::Rank::key;
  entry.anchor = "cell/c" + std::to_string(i);
  entry.key = {model::text_run(std::to_string(300 + i))};
  entry.running_key = std::to_string(300 + i);
  for (int k = 0; k < 1 + i % 4; ++k) {
    entry.blocks.push_back(std::make_shared<model::Block>(test::paragraph(test::prose(static_cast<unsigned>(i * 5 + k), 40))));
  }
  return {entry};
}

model::Book book_of_entries() {
  model::Blocks blocks;
  for (int i = 0; i < 60; ++i) blocks.push_back(entry(i));
  return test::book_with(std::move(blocks));
}

}  // namespace

TEST_CASE("the running head names the first and the last entry of its page") {
  const test::Laid laid = test::lay(book_of_entries());
  std::map<int, std::pair<int, int>> entries;
  for (const auto& [anchor, place] : laid.document.destinations) {
    if (anchor.rfind("cell/c", 0) != 0) continue;
    const int number = 300 + std::stoi(anchor.substr(6));
    auto [at, fresh] = entries.try_emplace(place.page, number, number);
    at->second.first = std::min(at->second.first, number);
    at->second.second = std::max(at->second.second, number);
  }
  CHECK(entries.size() > 8);
  std::map<int, int> heads;
  for (const test::Line& line : test::lines_of(laid.document)) {
    if (line.block != page::kPaginationArtifact || entries.count(line.page) == 0) continue;
    const auto [first, last] = entries.at(line.page);
    const std::string wanted =
        first == last ? std::to_string(first) : std::to_string(first) + "\u00A0to\u00A0" + std::to_string(last);
    heads[line.page] += line.text.find(wanted) != std::string::npos;
  }
  for (const auto& [page, range] : entries) CHECK(heads[page] == 1);
}

TEST_CASE("what a reader is told stands inside the text block") {
  const char* paper = GENERATE("a4", "letter");
  const page::Paper measures = page::paper_named(paper).value();
  const test::Laid laid = test::lay(book_of_entries(), paper);
  int seen = 0;
  for (const test::Line& line : test::lines_of(laid.document)) {
    if (line.block < 0 || laid.document.pages[static_cast<std::size_t>(line.page)].label.find_first_of("ivx") == 0) continue;
    const test::Edges block = test::block_edges(laid.document, line.page, paper);
    INFO(line.text);
    CHECK(line.left >= block.left - page::kPt / 10);
    CHECK(line.right <= block.right + page::kPt / 10);
    CHECK(line.y > measures.block_top);
    CHECK(line.y <= measures.block_top + measures.block_height);
    ++seen;
  }
  CHECK(seen > 300);
}

// By common practice, no source.
TEST_CASE("roman numerals are written and read back") {
  for (const auto& [number, text] : {std::pair{1, "i"}, {4, "iv"}, {1994, "mcmxciv"}, {3999, "mmmcmxcix"}}) {
    CHECK(page::roman(number) == text);
    CHECK(page::read_roman(text) == number);
  }
  CHECK(page::roman(0).empty());
  CHECK(page::roman(4000).empty());
  for (const char* text : {"", "iiii", "IV", "a"}) CHECK_FALSE(page::read_roman(text));
}

TEST_CASE("labels count in roman numerals, then from 1") {
  const test::Laid laid = test::lay(book_of_entries());
  const auto& pages = laid.document.pages;
  REQUIRE(pages.size() > 10);
  CHECK(pages[0].label == "i");
  CHECK(pages[1].label == "ii");
  std::size_t body = 0;
  while (pages[body].label != "1") ++body;
  CHECK(body % 2 == 0);  // page 1 is a right-hand page
  for (std::size_t i = body; i < pages.size(); ++i) CHECK(pages[i].label == std::to_string(i - body + 1));
}
