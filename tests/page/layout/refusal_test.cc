// What the page cannot print is a finding, never a hole or a box.
#include "page/layout/laid_book.h"
#include "support/catch.h"

using namespace benchleaf;

namespace {

std::string rules_of(const report::Findings& findings) {
  std::string text;
  for (const report::Finding& finding : findings.all()) text += std::string(report::rule_info(finding.rule).id) + " ";
  return text;
}

}  // namespace

TEST_CASE("a letter that no font has is a finding that names it") {
  const test::Laid laid = test::lay(test::book_with({test::paragraph("a \U00012000 sign")}));
  REQUIRE(laid.findings.all().size() == 1);
  CHECK(rules_of(laid.findings) == "font.missing-glyph ");
  CHECK(laid.findings.all().front().message.find("12000") != std::string::npos);
}

TEST_CASE("a word wider than its column is a finding") {
  model::Table table;
  table.columns = {{{}, model::Column::Align::left, 12, true}, {{}, model::Column::Align::left, 0, false}};
  table.rows = {{{{{model::text_run("unbreakablewordofmanyletters")}, nullptr}, {{model::text_run("why")}, nullptr}}, {}}};
  const test::Laid laid = test::lay(test::book_with({{table}}));
  CHECK(rules_of(laid.findings) == "page.too-wide ");
}

TEST_CASE("a table that cannot be as narrow as its place is a finding") {
  model::Table table;
  table.name = "grades";
  table.columns = {{{}, model::Column::Align::left, 0, true}, {{}, model::Column::Align::left, 0, false}};
  std::string joined = "one";
  for (int i = 0; i < 60; ++i) joined += "\u00A0word";  // nothing in it may be parted
  table.rows = {{{{{model::text_run("key")}, nullptr}, {{model::text_run(joined)}, nullptr}}, {}}};
  const test::Laid laid = test::lay(test::book_with({{table}}));
  CHECK(rules_of(laid.findings) == "page.too-wide ");
  CHECK(laid.findings.all().front().message.find("\"grades\"") != std::string::npos);
}

TEST_CASE("a link to no place is plain words") {
  model::Paragraph words;
  words.runs = {model::link_run("nowhere", "cell/none"), model::page_run("cell/none")};
  const test::Laid laid = test::lay(test::book_with({{words}}));
  std::size_t links = 0;
  for (const page::Page& page : laid.document.pages) {
    for (const page::LinkArea& link : page.links) links += link.target == "cell/none";
  }
  CHECK(links == 0);
}
