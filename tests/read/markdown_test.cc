// Checks of pages. Outside source for what Markdown means: CommonMark 0.29 and the GFM specification (tables); what is
// refused beyond that is the rule of this house, with places counted by hand.

#include "support/catch.h"

#include <string>

#include "read/markdown.h"
#include "read_support.h"

using namespace benchleaf;
using test::places_and_rules;

namespace {

struct Page {
  explicit Page(std::string words) : text(std::move(words)), page(read::read_markdown({text, 0, 10}, findings)) {}
  std::string text;
  report::Findings findings;
  read::MarkdownPage page;

  template <typename What>
  const What& block(std::size_t place) const {
    REQUIRE(place < page.parts.size());
    const auto* one = std::get_if<model::Block>(&page.parts.at(place));
    REQUIRE(one != nullptr);
    const auto* what = std::get_if<What>(&one->what);
    REQUIRE(what != nullptr);
    return *what;
  }
};

std::string found(const std::string& text) { return places_and_rules(Page(text).findings); }

}  // namespace

TEST_CASE("headings, paragraphs, emphasis, code and line breaks become blocks and runs") {
  Page page("## One *two*\n\nPlain **bold *both*** and `code x`,\nnext line.  \nAfter a break\\\nand another.\n\n### Sub\n");
  CHECK(found(page.text).empty());
  REQUIRE(page.page.parts.size() == 3);
  const auto& heading = page.block<model::Heading>(0);
  CHECK(heading.level == 2);
  CHECK(model::plain_text(heading.runs) == "One two");
  CHECK(heading.runs.at(1).style == model::Style::italic);
  const auto& runs = page.block<model::Paragraph>(1).runs;
  CHECK(model::plain_text(runs) == "Plain bold both and code x, next line. After a break and another.");
  CHECK(runs.at(1).style == model::Style::bold);
  CHECK(runs.at(2).style == (model::Style::bold | model::Style::italic));
  CHECK(runs.at(4).style == model::Style::code);
  CHECK(runs.at(6).kind == model::Run::Kind::line_break);
  CHECK(page.block<model::Heading>(2).level == 3);
}

TEST_CASE("lists, quotations and code blocks keep their build") {
  Page page("1. one\n2. two\n   - inner\n\n> A note.\n\n```\na\n b\n```\n");
  CHECK(found(page.text).empty());
  const auto& list = page.block<model::List>(0);
  CHECK(list.ordered);
  REQUIRE(list.items.size() == 2);
  REQUIRE(list.items.at(1).size() == 2);
  const auto* inner = std::get_if<model::List>(&list.items.at(1).at(1).what);
  REQUIRE(inner != nullptr);
  CHECK_FALSE(inner->ordered);
  CHECK(page.block<model::Paragraph>(1).role == model::Paragraph::Role::note);
  const auto& code = page.block<model::Paragraph>(2).runs;
  REQUIRE(code.size() == 3);
  CHECK(code.at(2).text == " b");
  CHECK(code.at(2).style == model::Style::code);
}

TEST_CASE("tables have a head, alignments and rows as long as the head") {
  Page page("| a | b | c |\n|---|:-:|--:|\n| 1 | **2** | 3 |\n| 4 |\n");
  CHECK(found(page.text).empty());
  const auto& table = page.block<model::Table>(0);
  REQUIRE(table.columns.size() == 3);
  CHECK(model::plain_text(table.columns.at(0).head) == "a");
  CHECK(table.columns.at(0).align == model::Column::Align::left);
  CHECK(table.columns.at(1).align == model::Column::Align::centre);
  CHECK(table.columns.at(2).align == model::Column::Align::right);
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows.at(0).cells.at(1).runs.at(0).style == model::Style::bold);
  CHECK(table.rows.at(1).cells.size() == 3);
}

TEST_CASE("links to records and facts are kept with their places; outside addresses become words") {
  Page page(
      "See [393](cell/sr754w), [its charge](cell/sr754w#capacity) and\n[](cell/sr754w#size.height) "
      "at [the institute](https://example.org/a) or <https://example.org/b>.\n");
  CHECK(found(page.text).empty());
  const auto& runs = page.block<model::Paragraph>(0).runs;
  CHECK(model::plain_text(runs) == "See 393, its charge and  at the institute (https://example.org/a) or https://example.org/b.");
  CHECK(runs.at(1).target == "cell/sr754w");
  CHECK(runs.at(1).fact.empty());
  CHECK(runs.at(3).target == "cell/sr754w");
  CHECK(runs.at(3).fact == "cell/sr754w#capacity");
  CHECK(runs.at(5).fact == "cell/sr754w#size.height");
  CHECK(runs.at(5).text.empty());
  for (const auto& run : runs) CHECK(run.target.find("https") == std::string::npos);
  REQUIRE(page.page.references.size() == 3);
  CHECK(page.page.references.at(0).text == "cell/sr754w");
  CHECK(page.page.references.at(0).span.line == 10);
  CHECK(page.page.references.at(0).span.column == 11);
  CHECK(page.page.references.at(1).span.column == 38);
  CHECK(page.page.references.at(2).span.line == 11);
  CHECK(page.page.references.at(2).span.column == 4);
}

TEST_CASE("a bench block is kept as a request, its YAML with the places of the file") {
  Page page("Text.\n\n```bench\nshow: cell-sizes\nof: [a,\n  b]\n```\n\nMore.\n");
  CHECK(found(page.text).empty());
  REQUIRE(page.page.parts.size() == 3);
  const auto* request = std::get_if<model::DerivedRequest>(&page.page.parts.at(1));
  REQUIRE(request != nullptr);
  CHECK(request->body.find("show")->text == "cell-sizes");
  CHECK(request->body.at_path("of.1")->span.line == 15);
  CHECK(found("```bench\na: 1\na: 2\n```\n") == "12:1 yaml.duplicate-key");
  CHECK(found("```bench\na: \"x\n```\n") == "11:4 yaml.open-quote");
  CHECK(found("- item\n\n  ```bench\n  a: 1\n  ```\n") == "12:3 markdown.construct");
}

TEST_CASE("what the book has no place for is one finding each") {
  CHECK(found("Text <b>bold</b>\n") == "10:1 markdown.html, 10:1 markdown.html");
  CHECK(found("<div>\nx\n</div>\n") == "10:1 markdown.html");
  CHECK(found("<!-- a comment -->\n") == "10:1 markdown.html");
  CHECK(found("![a](b.png)\n") == "10:1 markdown.image");
  CHECK(found("![a](https://example.org/b.png)\n") == "10:1 markdown.image");
  CHECK(found("a\n\n***\n\nb\n") == "12:1 markdown.construct");
  CHECK(found("# Title\n") == "10:1 markdown.heading");
  CHECK(found("## A\n\n#### B\n") == "12:1 markdown.heading");
  CHECK(found("##### B\n") == "10:1 markdown.heading");
  CHECK(found("[a](cells.md)\n") == "10:5 markdown.link");
  CHECK(found("[a](#part)\n") == "10:5 markdown.link");
  CHECK(found("[a](javascript:alert)\n") == "10:5 markdown.link");
  CHECK(found("[a](sell/sr754w)\n") == "10:5 markdown.link");
  CHECK(found("a\xE2\x80\x8B"
              "b\n") == "10:2 yaml.hidden-character");
}

TEST_CASE("pages that would hold the parser up are refused before it sees them") {
  CHECK(found(std::string(256 * 1024 + 1, 'x')) == "1:1 markdown.size");
  std::string head = "|", rule = "|";
  for (int i = 0; i < 41; ++i) head += "a|", rule += "-|";
  CHECK(found(head + "\n" + rule + "\n") == "11:1 markdown.table-size");
  std::string rows = "|a|b|\n|-|-|\n";
  for (int i = 0; i < 1000; ++i) rows += "|1|2|\n";
  CHECK(found(rows) == "11:1 markdown.table-size");
  std::string quoted = "> " + head + "\n> " + rule + "\n";
  CHECK(found(quoted) == "11:1 markdown.table-size");
  std::string open;
  for (int i = 0; i < 101; ++i) open += "a <![CDATA[ ";
  CHECK(found(open) == "10:3 markdown.html");
  std::string deep;
  for (int i = 0; i < 200; ++i) deep += "> ";
  CHECK(found(deep + "a\n") == "10:1 markdown.depth");
}

TEST_CASE("autolinks make no links of numbers, and tables keep a bar in code") {
  Page page("www.example.org and SR754W.IT and a@b.org\n\n| a |\n|---|\n| `x\\|y` |\n");
  CHECK(found(page.text).empty());
  CHECK(page.block<model::Paragraph>(0).runs.size() == 1);
  CHECK(model::plain_text(page.block<model::Table>(1).rows.at(0).cells.at(0).runs) == "x|y");
}
