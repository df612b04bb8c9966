// What must not part at the foot of a page. The rules are those of printed books (common practice, no source): no heading
// last on its page, no single line of a paragraph alone, a safety message on the page of the step that it guards.
#include <map>

#include "page/layout/laid_book.h"
#include "support/catch.h"

using namespace benchleaf;

namespace {

bool is_heading(page::Role role) {
  return role == page::Role::h1 || role == page::Role::h2 || role == page::Role::h3 || role == page::Role::h4;
}

/// Headings, paragraphs of one to twelve lines, and messages before steps, in an order of dice.
model::Blocks mixed(unsigned seed) {
  model::Blocks blocks;
  for (unsigned i = 0; i < 120; ++i) {
    const unsigned turn = (i * 7 + seed * 13) % 5;
    if (turn == 0)
      blocks.push_back(test::heading(2 + static_cast<int>(i % 2), "Heading " + std::to_string(i), "h/" + std::to_string(i)));
    if (turn == 1) {
      model::Message message;
      message.word = model::Message::Word::warning;
      message.hazard = {model::text_run("Guard " + std::to_string(i) + ". " + test::prose(i + seed, 20))};
      blocks.push_back({message});
      model::Step step;
      step.number = static_cast<int>(i);
      step.runs = {model::text_run("Step " + std::to_string(i) + ". " + test::prose(i + seed, 25))};
      blocks.push_back({step});
    }
    blocks.push_back(test::paragraph(test::prose(i + seed * 1000, 10 + static_cast<int>((i * 37 + seed) % 150))));
  }
  return blocks;
}

}  // namespace

TEST_CASE("no heading is the last line of its page") {
  int headings = 0;
  for (unsigned seed = 1; seed <= 6; ++seed) {
    const test::Laid laid = test::lay(test::book_with(mixed(seed)), seed % 2 == 0 ? "a4" : "letter");
    std::map<int, test::Line> last;
    for (const test::Line& line : test::lines_of(laid.document)) {
      if (line.block < 0 || laid.document.pages[static_cast<std::size_t>(line.page)].label.find_first_of("ivx") == 0) continue;
      last[line.page] = line;
      headings += is_heading(line.role);
    }
    CHECK(last.size() > 10);
    for (const auto& [page, line] : last) {
      INFO("seed " << seed << ", page " << page << ": " << line.text);
      CHECK_FALSE(is_heading(line.role));
    }
  }
  CHECK(headings > 100);
}

TEST_CASE("words that announce what follows are not the last line of their page") {
  int announced = 0;
  for (unsigned seed = 1; seed <= 6; ++seed) {
    model::Blocks blocks;
    for (unsigned i = 0; i < 150; ++i) {
      blocks.push_back(test::paragraph(test::prose(i + seed * 1000, 10 + static_cast<int>((i * 37 + seed) % 90))));
      blocks.push_back(test::paragraph(test::prose(i + seed * 2000, 3 + static_cast<int>(i % 40)) + " as follows:"));
    }
    blocks.push_back(test::paragraph(test::prose(seed, 20)));
    const test::Laid laid = test::lay(test::book_with(blocks));
    std::map<int, test::Line> last;
    for (const test::Line& line : test::lines_of(laid.document)) {
      if (line.block < 0 || line.role != page::Role::p) continue;
      last[line.page] = line;
      announced += !line.text.empty() && line.text.back() == ':';
    }
    for (const auto& [page, line] : last) {
      INFO("seed " << seed << ", page " << page << ": " << line.text);
      CHECK((line.text.empty() || line.text.back() != ':'));
    }
  }
  CHECK(announced > 500);
}

TEST_CASE("a paragraph that breaks leaves two lines or more on either page") {
  int broken = 0;
  for (unsigned seed = 1; seed <= 6; ++seed) {
    const test::Laid laid = test::lay(test::book_with(mixed(seed)));
    std::map<page::TagId, std::map<int, int>> lines;
    for (const test::Line& line : test::lines_of(laid.document)) {
      if (line.role == page::Role::p) ++lines[line.block][line.page];
    }
    for (const auto& [block, pages] : lines) {
      if (pages.size() < 2) continue;
      ++broken;
      for (const auto& [page, count] : pages) CHECK(count >= 2);
    }
  }
  CHECK(broken > 20);
}

TEST_CASE("a message stands on the page of its step, above it") {
  int guarded = 0;
  for (unsigned seed = 1; seed <= 6; ++seed) {
    const test::Laid laid = test::lay(test::book_with(mixed(seed)));
    std::map<std::string, test::Line> guards;
    for (const test::Line& line : test::lines_of(laid.document)) {
      if (line.text.rfind("Guard ", 0) == 0) guards[line.text.substr(6, line.text.find('.') - 6)] = line;
      const std::size_t step = line.text.find("Step ");
      if (step == std::string::npos) continue;
      const std::string number = line.text.substr(step + 5, line.text.find('.', step) - step - 5);
      REQUIRE(guards.count(number) == 1);
      CHECK(guards.at(number).page == line.page);
      CHECK(guards.at(number).y < line.y);
      ++guarded;
    }
  }
  CHECK(guarded > 60);
}
