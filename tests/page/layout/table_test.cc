// Tables over several pages. Every row once, the head repeated on each page, one element for the whole table, the repeated
// heads told to nobody (ISO 32000-1, 14.8.2.2: pagination artifacts).
#include <map>
#include <set>

#include "page/layout/laid_book.h"
#include "support/catch.h"

using namespace benchleaf;

namespace {

constexpr int kRows = 200;

model::Table long_table() {
  model::Table table;
  table.columns = {{{model::text_run("number")}, model::Column::Align::left, 0, true},
                   {{model::text_run("height")}, model::Column::Align::decimal, 0, false},
                   {{model::text_run("remarks")}, model::Column::Align::left, 0, false}};
  for (int i = 0; i < kRows; ++i) {
    const std::string height = std::to_string(i % 30) + (i % 3 == 0 ? ".25 mm" : i % 3 == 1 ? ".5 mm" : ".125 mm");
    table.rows.push_back({{{{model::text_run("R" + std::to_string(i))}, nullptr},
                           {{model::text_run(height)}, nullptr},
                           {{model::text_run(test::prose(static_cast<unsigned>(i), 5 + i % 40))}, nullptr}},
                          {}});
  }
  return table;
}

struct Read {
  std::map<std::string, int> keys;        ///< how often each row's key is printed
  std::map<int, std::string> first_line;  ///< of the text block, by page
  std::set<int> pages;
  int told_heads = 0;
  int repeated_heads = 0;
};

Read read(const page::Document& document) {
  Read read;
  for (const test::Line& line : test::lines_of(document)) {
    if (line.role == page::Role::header_cell && line.text.rfind('R', 0) == 0) {
      ++read.keys[line.text];
      read.pages.insert(line.page);
    }
    if (line.text.rfind("number", 0) != 0) continue;
    if (line.block >= 0) ++read.told_heads;
    if (line.block == page::kPaginationArtifact) ++read.repeated_heads;
  }
  return read;
}

}  // namespace

TEST_CASE("a long table repeats its head on every page and prints every row once") {
  const char* paper = GENERATE("a4", "letter");
  const test::Laid laid = test::lay(test::book_with({test::paragraph(test::prose(3, 200)), {long_table()}}), paper);
  CHECK_FALSE(laid.findings.has_errors());
  const Read found = read(laid.document);
  CHECK(found.keys.size() == kRows);
  for (const auto& [key, times] : found.keys) CHECK(times == 1);
  CHECK(found.pages.size() > 5);
  CHECK(found.told_heads == 1);
  CHECK(found.repeated_heads == static_cast<int>(found.pages.size()) - 1);
}

TEST_CASE("a table is one element however many pages it takes") {
  const test::Laid laid = test::lay(test::book_with({{long_table()}}));
  int tables = 0;
  int rows = 0;
  for (const page::Tag& tag : laid.document.tags) {
    tables += tag.role == page::Role::table;
    rows += tag.role == page::Role::row;
  }
  CHECK(tables == 1);
  CHECK(rows == kRows + 1);
}

TEST_CASE("figures of a column stand with their points under each other") {
  const test::Laid laid = test::lay(test::book_with({{long_table()}}));
  // The figure before the point is as wide as a figure; so with one figure before it a line starts one width further right.
  std::map<std::size_t, std::set<page::Length>> starts;
  for (const test::Line& line : test::lines_of(laid.document)) {
    const std::size_t point = line.text.find(".");
    if (line.role != page::Role::data_cell || line.text.find("mm") == std::string::npos) continue;
    const page::Length edge = test::block_edges(laid.document, line.page).left;
    starts[point].insert((line.left - edge + 500) / 1000);
  }
  REQUIRE(starts.size() == 2);
  CHECK(starts.at(1).size() == 1);
  CHECK(starts.at(2).size() == 1);
  CHECK(*starts.at(1).begin() > *starts.at(2).begin());
}

TEST_CASE("a drawing in a row takes the lines beside it without a gap") {
  auto drawing = std::make_shared<model::Drawing>();
  drawing->width_mm = 20;
  drawing->height_mm = 14;
  drawing->alt = "a ring";
  model::Table table;
  table.columns = {{{}, model::Column::Align::left, 0, true}, {{}, model::Column::Align::left, 0, false}};
  table.rows = {{{{{model::text_run("key")}, drawing}, {{model::text_run(test::prose(5, 260))}, nullptr}}, {}}};
  const test::Laid laid = test::lay(test::book_with({{table}}));
  std::set<page::Length> leadings;
  page::Length above = 0;
  for (const test::Line& line : test::lines_of(laid.document)) {
    if (line.role != page::Role::data_cell) continue;
    if (above != 0) leadings.insert(line.y - above);
    above = line.y;
  }
  CHECK(leadings.size() == 1);
}
