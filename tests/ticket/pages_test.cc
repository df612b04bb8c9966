// The paper of a ticket, counted: a front sheet has one page or two, a plain change of the cell one page in all, and no type is
// smaller than what is read at arm's length.
#include <algorithm>
#include <cctype>
#include <sstream>
#include <string>

#include "page/packed.h"
#include "page/paper.h"
#include "page/set_leaflet.h"
#include "page/text/text_support.h"
#include "support/catch.h"
#include "ticket/made_up.h"
#include "ticket/planned.h"

using namespace benchleaf;

namespace {

constexpr double kLeastType = 9.5;  // pt, the floor of the sheets
constexpr double kLeastKey = 12;    // pt, of a figure that is looked for first

page::Document set(const ticket::Bench& bench, ticket::Extent extent, const char* paper) {
  report::Findings findings;
  const ticket::Plan plan = ticket::make_plan(bench, findings);
  const ticket::Sheets sheets = ticket::make_sheets(bench, plan, findings);
  const model::Leaflet leaflet = ticket::ticket_leaflet(bench, plan, sheets, extent, findings);
  return page::set_leaflet(leaflet, page::paper_named(paper).value(), test::book_fonts(), &test::book_hyphenator(), findings);
}

/// The smallest type of the figures of the front page that are looked for first, in points: what is set larger than its words.
double least_key(const page::Document& document) {
  constexpr double kWords = 11.95;  // pt, the largest type of words, headings and signal words
  double least = 1000;
  page::for_each_item(document.pages.front(), [&least](const page::Item& item) {
    const auto* text = std::get_if<page::TextItem>(&item.what);
    if (text != nullptr && static_cast<double>(text->size) / 1000 > kWords)
      least = std::min(least, static_cast<double>(text->size) / 1000);
  });
  return least;
}

/// The smallest type on a document, in points.
double least_type(const page::Document& document) {
  double least = 1000;
  for (const page::Page& one : document.pages) {
    page::for_each_item(one, [&least](const page::Item& item) {
      const auto* text = std::get_if<page::TextItem>(&item.what);
      if (text != nullptr) least = std::min(least, static_cast<double>(text->size) / 1000);
    });
  }
  return least;
}

std::size_t words_on_front(const ticket::Sheets& sheets) {
  std::size_t words = 0;
  for (const auto& section : sheets.front) {
    if (section.id.rfind("causes-", 0) == 0 || section.id.rfind("questions", 0) == 0) continue;  // behind the front page
    for (const auto& line : section.lines) {
      std::istringstream text(ticket::line_text(line, test::real_book().records));
      for (std::string word; text >> word;)
        words += std::any_of(word.begin(), word.end(), [](unsigned char c) { return std::isalnum(c) != 0; }) ? 1 : 0;
    }
  }
  return words;
}

std::string words_of(const page::Page& one) {
  std::string words;
  page::for_each_item(one, [&words](const page::Item& item) {
    if (const auto* text = std::get_if<page::TextItem>(&item.what)) words += text->text + " ";
  });
  return words;
}

}  // namespace

TEST_CASE("the front sheet of five hundred watches has at most two pages") {
  test::MadeUp made_up(20261202);
  for (int number = 0; number < 500; ++number) {
    const model::Watch watch = made_up.watch(number);
    const page::Document front = set(test::bench_of(watch), ticket::Extent::front, number % 2 == 0 ? "a4" : "letter");
    INFO(watch.id);
    CHECK(front.pages.size() <= 2);
    CHECK(front.pages.size() >= 1);
  }
}

TEST_CASE("the demonstrations have one front page, and a page a job behind it") {
  for (const char* id : {"quillfen-d-001", "quillfen-d-002", "quillfen-d-003"}) {
    const ticket::Bench bench = test::bench_of(test::demonstration(id));
    INFO(id);
    report::Findings findings;
    const ticket::Plan plan = ticket::make_plan(bench, findings);
    const ticket::Sheets sheets = ticket::make_sheets(bench, plan, findings);
    CHECK(set(bench, ticket::Extent::front, "a4").pages.size() == 1);
    if (sheets.jobs.size() <= 14) CHECK(set(bench, ticket::Extent::front, "letter").pages.size() == 1);  // 18 mm lower
    for (const char* paper : {"a4", "letter"}) {
      const page::Document whole = set(bench, ticket::Extent::whole, paper);
      CHECK(whole.pages.size() <= sheets.jobs.size() + 1);
      CHECK(least_type(whole) >= kLeastType);
      CHECK(least_key(whole) >= kLeastKey);
    }
    CHECK(words_on_front(sheets) <= 750);
    CHECK(words_on_front(sheets) > 150);
  }
}

TEST_CASE("a plain change of the cell is one page in all") {
  model::Watch watch = test::demonstration("quillfen-d-003");
  watch.jobs.clear();
  watch.wishes = {"new-cell"};
  watch.symptoms.clear();
  CHECK(set(test::bench_of(watch), ticket::Extent::whole, "a4").pages.size() == 1);
  CHECK(set(test::bench_of(watch), ticket::Extent::whole, "letter").pages.size() == 1);
}

TEST_CASE("what to do in an emergency is on the first page, however long the watch's history is") {
  model::Watch watch = test::demonstration("quillfen-d-001");
  const model::RecordRef cell(model::Kind::cell, "sr754w");
  for (const char* date : {"2017-03", "2019-02", "2021-01", "2022-12", "2024-10"})
    watch.visits.push_back({date, cell, {}, test::quantity("1.58 V"), test::quantity("2.4 \u00B5A"), "+0.3", "new", "cell", ""});
  for (const char* paper : {"a4", "letter"}) {
    const page::Document front = set(test::bench_of(watch), ticket::Extent::front, paper);
    INFO(paper);
    CHECK(front.pages.size() <= 2);
    CHECK(words_of(front.pages.front()).find("Emergency") != std::string::npos);
  }
}
