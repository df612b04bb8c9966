// No words of the real handbook overlap or stand in a margin, on either paper.
#include "command/setting.h"
#include "command/workbench.h"
#include "compose/entries/book.h"
#include "page/paper.h"
#include "support/catch.h"
#include "support/text_boxes.h"

using namespace benchleaf;

TEST_CASE("words of the handbook overlap nowhere and stand in their areas") {
  auto opened = command::open_workbench({});
  REQUIRE(std::holds_alternative<command::Workbench>(opened));
  command::Workbench& bench = std::get<command::Workbench>(opened);
  const auto type = command::open_type_case(bench.fonts, bench.findings);
  REQUIRE(type);
  const model::Book book = compose::make_book(bench.base, bench.tables, bench.derived, compose::Medium::paper, bench.findings);
  for (const std::string paper : {"a4", "letter"}) {
    const page::Document document = command::set_on(book, paper, *type, bench.findings);
    CHECK(document.pages.size() > 100);
    for (const std::string& fault : test::box_faults(document, type->fonts, page::paper_named(paper).value())) FAIL_CHECK(fault);
  }
}
